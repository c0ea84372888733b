#include "revise_view_model.h"

#include "core/box/box_events.h"
#include "core/box/revision_why.h"
#include "mobile/bridge/letters.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/text.h"
#include "mobile/bridge/workbench_desk.h"

#include <algorithm>

namespace lidlark::mobile {

void ReviseViewModel::setHousehold(Household *household)
{
    m_household = household;
    load();
}

void ReviseViewModel::load()
{
    const auto family = m_household->family();
    m_problem = family ? QString() : m_household->sentenceFor(family.error());
    renewRows([&] {
        m_order.clear();
        m_before.clear();
        if (family && family->revision) {
            m_number = family->revision->revision.number;
            m_before = family->revision->revision.packed;
        }
        m_pieces = m_before;
        for (const auto &[item, pieces] : m_before)
            m_order.push_back(item);
    });
    tell();
}

/// Weighed anew with each change, so that the gate's word stands there before anything is sent.
void ReviseViewModel::tell()
{
    m_effects.clear();
    if (isChanged()) {
        const auto weighed = weigh(*m_household, packed());
        if (weighed)
            m_effects = effectsOf(*weighed);
        else
            m_problem = m_household->sentenceFor(weighed.error());
    }
    if (rowCount() > 0)
        emit dataChanged(index(0), index(rowCount() - 1));
    emit loaded();
}

ReviseViewModel::Packed ReviseViewModel::packed() const
{
    Packed packed;
    for (const auto &[item, pieces] : m_pieces) {
        if (pieces > 0)
            packed[item] = pieces;
    }
    return packed;
}

bool ReviseViewModel::isChanged() const
{
    return packed() != m_before;
}

QString ReviseViewModel::nameOf(const ItemId &item) const
{
    const catalogue::ItemKind *kind = m_household->catalogue().item(item);
    return fromCore(kind != nullptr ? kind->name : item.value);
}

QString ReviseViewModel::noteOf(const ItemId &item) const
{
    const auto before = m_before.find(item);
    if (before == m_before.end())
        return tr("new on the list");
    const auto now = m_pieces.find(item);
    if (now != m_pieces.end() && now->second == before->second)
        return {};
    return tr("%1 until now").arg(numerals(before->second));
}

ItemId ReviseViewModel::swapOf(const ItemId &item) const
{
    const catalogue::ItemKind *kind = m_household->catalogue().item(item);
    if (kind == nullptr || !kind->swap || m_pieces.at(item) > 0)
        return {};
    const auto there = m_pieces.find(kind->swap->with);
    return there != m_pieces.end() && there->second > 0 ? ItemId{} : kind->swap->with;
}

QString ReviseViewModel::listed(const std::vector<usecase::Pieces> &things) const
{
    QStringList names;
    for (const usecase::Pieces &thing : things)
        names.append(tr("%1 (%2)").arg(nameOf(thing.item), numerals(thing.pieces)));
    return names.join(QStringLiteral(", "));
}

QString ReviseViewModel::activities(const std::vector<ActivityId> &ids) const
{
    QStringList names;
    for (const ActivityId &id : ids) {
        const catalogue::Activity *activity = m_household->catalogue().activity(id);
        names.append(fromCore(activity != nullptr ? activity->name : id.value));
    }
    return names.join(QStringLiteral(", "));
}

QStringList ReviseViewModel::effectsOf(const usecase::RevisionWeighed &weighed) const
{
    QStringList lines;
    if (!weighed.takeOut.empty())
        lines.append(tr("The home takes out: %1.").arg(listed(weighed.takeOut)));
    if (!weighed.onTheWay.empty())
        lines.append(tr("To be sent, and on the way until it is counted in: %1.")
                         .arg(listed(weighed.onTheWay)));
    if (!weighed.goes.empty())
        lines.append(tr("No longer offered: %1.").arg(activities(weighed.goes)));
    if (!weighed.waits.empty())
        lines.append(
            tr("Not offered until what is new is counted in: %1.").arg(activities(weighed.waits)));
    if (!weighed.comes.empty())
        lines.append(
            tr("Offered as well, once it is counted in: %1.").arg(activities(weighed.comes)));
    if (weighed.goes.empty() && weighed.waits.empty() && weighed.comes.empty())
        lines.append(tr("The same activities are offered as before."));
    return lines;
}

QStringList ReviseViewModel::rowKeys() const
{
    QStringList keys;
    keys.reserve(static_cast<qsizetype>(m_order.size()));
    for (const ItemId &item : m_order)
        keys.append(fromCore(item.value));
    return keys;
}

int ReviseViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_order.size());
}

QVariant ReviseViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const ItemId &item = m_order[static_cast<std::size_t>(index.row())];
    const catalogue::ItemKind *kind = m_household->catalogue().item(item);
    switch (role) {
    case ItemIdRole:
        return fromCore(item.value);
    case NameRole:
        return capitalised(nameOf(item));
    case DrawingRole:
        return fromCore(kind != nullptr ? kind->drawing : std::string());
    case NoteRole:
        return noteOf(item);
    case PiecesRole:
        return m_pieces.at(item);
    case OutRole:
        return m_pieces.at(item) == 0;
    case SwapIdRole:
        return fromCore(swapOf(item).value);
    case SwapNameRole: {
        const ItemId swap = swapOf(item);
        return swap.empty() ? QString() : nameOf(swap);
    }
    default:
        return {};
    }
}

QHash<int, QByteArray> ReviseViewModel::roleNames() const
{
    return {{ItemIdRole, "itemId"}, {NameRole, "name"},        {DrawingRole, "drawing"},
            {NoteRole, "note"},     {PiecesRole, "pieces"},    {OutRole, "out"},
            {SwapIdRole, "swapId"}, {SwapNameRole, "swapName"}};
}

bool ReviseViewModel::has(const QString &itemId) const
{
    const auto known = m_pieces.find({toCore(itemId)});
    return known != m_pieces.end() && known->second > 0;
}

void ReviseViewModel::setPieces(const QString &itemId, int pieces)
{
    const auto known = m_pieces.find({toCore(itemId)});
    if (known == m_pieces.end() || pieces < 0 || pieces > box::mostPieces)
        return;
    known->second = pieces;
    m_problem.clear();
    tell();
}

void ReviseViewModel::leaveOut(const QString &itemId, bool out)
{
    const ItemId item{toCore(itemId)};
    const auto before = m_before.find(item);
    setPieces(itemId, out ? 0 : before != m_before.end() ? before->second : 1);
}

void ReviseViewModel::put(const ItemId &item, int pieces)
{
    const catalogue::ItemKind *kind = m_household->catalogue().item(item);
    if (kind == nullptr || kind->source != catalogue::Source::Box)
        return;
    const auto before = m_before.find(item);
    renewRows([&] {
        if (!m_pieces.contains(item))
            m_order.push_back(item);
        m_pieces[item] = before != m_before.end() ? before->second
                         : kind->lidCount > 0     ? kind->lidCount
                                                  : pieces;
    });
    m_problem.clear();
    tell();
}

void ReviseViewModel::putIn(const QString &itemId)
{
    put({toCore(itemId)}, 1);
}

void ReviseViewModel::putInFor(const QString &itemId, const QString &leftOut)
{
    const auto before = m_before.find({toCore(leftOut)});
    put({toCore(itemId)}, before != m_before.end() ? before->second : 1);
}

bool ReviseViewModel::send(const QString &why)
{
    const QString words = why.trimmed();
    if (!isChanged())
        m_problem = tr("The list is as it was. Change something first.");
    else if (words.isEmpty())
        m_problem = tr("Why: say it in a few words. The family reads it beside the new list.");
    else if (toCore(words).size() > box::longestWhy)
        m_problem = tr("Why: this is too long. Say it shorter.");
    else if (const Outcome sent = revise(*m_household, packed(), words); !sent)
        m_problem = m_household->sentenceFor(sent.error());
    else {
        m_household->announce();
        return true;
    }
    emit loaded();
    return false;
}

} // namespace lidlark::mobile
