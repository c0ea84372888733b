#include "own_item_view_model.h"

#include "mobile/bridge/letters.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

QString OwnItemViewModel::title() const
{
    if (m_ours != nullptr)
        return nameOf(m_entry);
    return kind().name.empty() ? tr("A thing of your own") : capitalised(fromCore(kind().name));
}

QString OwnItemViewModel::name() const
{
    return fromCore(kind().name);
}

void OwnItemViewModel::setName(const QString &words)
{
    write(kind().name, words);
}

QString OwnItemViewModel::one() const
{
    return fromCore(kind().one);
}

void OwnItemViewModel::setOne(const QString &words)
{
    write(kind().one, words);
}

QString OwnItemViewModel::drawing() const
{
    return fromCore(kind().drawing);
}

QString OwnItemViewModel::lookFor() const
{
    return fromCore(kind().life.check);
}

void OwnItemViewModel::setLookFor(const QString &words)
{
    write(kind().life.check, words);
}

void OwnItemViewModel::setLidCount(int pieces)
{
    kind().lidCount = pieces;
    touch();
}

} // namespace lidlark::mobile
