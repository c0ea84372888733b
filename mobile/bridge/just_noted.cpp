#include "mobile/bridge/just_noted.h"

#include "mobile/bridge/noted_lines.h"

#include <algorithm>

namespace lidlark::mobile {

void JustNoted::setHousehold(Household *household)
{
    m_household = household;
    connect(household, &Household::changed, this, &JustNoted::look);
    connect(household, &Household::childChanged, this, &JustNoted::lookFrom);
    lookFrom();
}

/// Plays begin, and are played easier, under everybody's eyes; notes and ways stand where they were
/// written. What leaves no trace on the screen is told of.
bool JustNoted::isToldOf(const usecase::Noted &noted) const
{
    const journal::Event &event = noted.last();
    if (!noted.mine || event.device != m_household->device())
        return false;
    return event.lane.kind == journal::LaneKind::Box ||
           event.lane.kind == journal::LaneKind::Safety || event.kind == journal::Kind::PlayEnded;
}

void JustNoted::lookFrom()
{
    if (!m_household->isOpen())
        return;
    m_upTo = {};
    for (const usecase::Noted &noted : m_household->notedToday())
        m_upTo = std::max(m_upTo, noted.last().instant);
    putAway();
}

void JustNoted::look()
{
    const auto all = m_household->notedToday();
    const auto newest =
        std::find_if(all.begin(), all.end(), [this](const auto &noted) { return isToldOf(noted); });
    if (newest == all.end() || newest->takenBack || newest->last().instant <= m_upTo)
        return;
    m_upTo = newest->last().instant;
    m_event = journal::identityOf(newest->last());
    m_text = notedLines(*newest, *m_household).join(u'\n');
    m_takenBack = false;
    ++m_serial;
    emit changed();
}

bool JustNoted::takeBack()
{
    if (!report(m_household->takeBack(m_event)))
        return false;
    m_takenBack = true;
    emit changed();
    m_household->announce();
    return true;
}

bool JustNoted::putInAgain()
{
    if (!report(m_household->putInAgain(m_event)))
        return false;
    m_takenBack = false;
    emit changed();
    m_household->announce();
    return true;
}

void JustNoted::putAway()
{
    if (m_text.isEmpty())
        return;
    m_text.clear();
    emit changed();
}

bool JustNoted::report(const Outcome &outcome)
{
    if (!outcome)
        emit failed(m_household->sentenceFor(outcome.error()));
    return outcome.ok();
}

} // namespace lidlark::mobile
