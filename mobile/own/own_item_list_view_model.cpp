#include "own_item_list_view_model.h"

#include "mobile/bridge/letters.h"
#include "mobile/bridge/own_item_desk.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

Result<std::vector<OwnOnDesk>> OwnItemListViewModel::desk(Household &household) const
{
    return ownItems(household);
}

QString OwnItemListViewModel::nameOf(const OwnOnDesk &row) const
{
    return row.name.isEmpty() ? tr("Without a name yet") : capitalised(row.name);
}

QString OwnItemListViewModel::noteOf(const OwnOnDesk &row) const
{
    const QString names = row.children.join(QStringLiteral(", "));
    QStringList words;
    if (!catalogue::isOwnId(toCore(row.id)))
        words.append(tr("One of ours, as you measured it"));
    if (row.children.isEmpty())
        words.append(row.signedOff ? tr("Ready, and sent to no box yet") : tr("A draft"));
    else
        words.append((row.newer ? tr("Sent to the box of %1, and changed since")
                                : tr("It counts in the box of %1"))
                         .arg(names));
    return words.join(u'\n');
}

QString OwnItemListViewModel::fresh() const
{
    return household() != nullptr ? newOwnItem(*household()) : QString();
}

} // namespace lidlark::mobile
