#include "own_writing_view_model.h"

#include "mobile/bridge/text.h"

namespace lidlark::mobile {

QString OwnWritingViewModel::name() const
{
    return fromCore(m_draft.name);
}

void OwnWritingViewModel::setName(const QString &words)
{
    write(m_draft.name, words);
}

QString OwnWritingViewModel::invite() const
{
    return fromCore(m_draft.invite);
}

void OwnWritingViewModel::setInvite(const QString &words)
{
    write(m_draft.invite, words);
}

QString OwnWritingViewModel::adultLine() const
{
    return fromCore(m_draft.adultLine);
}

void OwnWritingViewModel::setAdultLine(const QString &words)
{
    write(m_draft.adultLine, words);
}

QString OwnWritingViewModel::floorReason() const
{
    return fromCore(m_draft.floorReason);
}

void OwnWritingViewModel::setFloorReason(const QString &words)
{
    write(m_draft.floorReason, words);
}

QString OwnWritingViewModel::oneHand() const
{
    return fromCore(m_draft.waysIn.oneHand);
}

void OwnWritingViewModel::setOneHand(const QString &words)
{
    write(m_draft.waysIn.oneHand, words);
}

QString OwnWritingViewModel::seated() const
{
    return fromCore(m_draft.waysIn.seated);
}

void OwnWritingViewModel::setSeated(const QString &words)
{
    write(m_draft.waysIn.seated, words);
}

void OwnWritingViewModel::setMinutesOut(int minutes)
{
    m_draft.minutes.out = minutes;
    touch();
}

void OwnWritingViewModel::setMinutesPlay(int minutes)
{
    m_draft.minutes.play = minutes;
    touch();
}

void OwnWritingViewModel::setMinutesBack(int minutes)
{
    m_draft.minutes.back = minutes;
    touch();
}

} // namespace lidlark::mobile
