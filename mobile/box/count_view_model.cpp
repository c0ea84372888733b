#include "count_view_model.h"

#include "item_words.h"
#include "well_order.h"

#include "core/wording/count_words.h"
#include "mobile/bridge/guarding_words.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

namespace {

constexpr int mostCounted = 99;

} // namespace

void CountViewModel::setHousehold(Household *household)
{
    m_household = household;
    load();
}

void CountViewModel::load()
{
    beginResetModel();
    m_rows = m_household->boxItems();
    sortByWell(m_rows);
    m_counted.clear();
    m_said.clear();
    for (const usecase::BoxItem &item : m_rows)
        m_counted[item.row.item] = item.row.low;
    endResetModel();
    emit loaded();
}

int CountViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant CountViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const auto at = static_cast<std::size_t>(index.row());
    const usecase::BoxItem &item = m_rows[at];
    switch (role) {
    case ItemIdRole:
        return fromCore(item.row.item.value);
    case NameRole:
        return itemNameInside(item);
    case DrawingRole:
        return itemDrawing(item);
    case NoteRole: {
        const QString listed = tr("%1 on the lid list").arg(numerals(item.row.expected));
        return item.row.out > 0 ? tr("%1. %2").arg(listed, outText(item.row.out)) : listed;
    }
    case LookRole:
        return item.kind != nullptr ? lookWordsOf(*item.kind) : QString();
    case CountedRole:
        return m_counted.at(item.row.item);
    case SaidRole:
        return isSaid(index.row());
    case ExpectedRole:
        return item.row.high;
    case NextNameRole:
        return at + 1 < m_rows.size() ? itemNameInside(m_rows[at + 1]) : QString();
    default:
        return {};
    }
}

QHash<int, QByteArray> CountViewModel::roleNames() const
{
    return {{ItemIdRole, "itemId"},     {NameRole, "name"},      {DrawingRole, "drawing"},
            {NoteRole, "note"},         {CountedRole, "pieces"}, {SaidRole, "said"},
            {ExpectedRole, "expected"}, {LookRole, "look"},      {NextNameRole, "nextName"}};
}

bool CountViewModel::isSaid(int row) const
{
    return row >= 0 && row < rowCount() &&
           m_said.contains(m_rows[static_cast<std::size_t>(row)].row.item);
}

void CountViewModel::countUp(int row)
{
    if (row < 0 || row >= rowCount())
        return;
    const ItemId &item = m_rows[static_cast<std::size_t>(row)].row.item;
    const int pieces = (isSaid(row) ? m_counted.at(item) : 0) + 1;
    if (pieces <= mostCounted && m_voice != nullptr)
        m_voice->say(translated(wording::countedAloud(pieces)));
    setCounted(row, pieces);
}

void CountViewModel::setCounted(int row, int pieces)
{
    if (row < 0 || row >= rowCount() || pieces < 0 || pieces > mostCounted)
        return;
    const ItemId &item = m_rows[static_cast<std::size_t>(row)].row.item;
    m_counted[item] = pieces;
    m_said.insert(item);
    emit dataChanged(index(row), index(row), {CountedRole, SaidRole});
    emit loaded();
}

bool CountViewModel::keep()
{
    QStringList differences;
    for (const usecase::BoxItem &item : m_rows) {
        const auto words =
            wording::countDifference({toCore(itemNameInside(item)), m_counted.at(item.row.item),
                                      item.row.low, item.row.high});
        if (words)
            differences.append(translated(*words));
    }
    const Outcome done = m_household->countBox(m_counted);
    m_problem = done ? QString() : m_household->sentenceFor(done.error());
    if (done) {
        m_differences = differences;
        m_kept = true;
        m_floorNote = !m_household->floorSearch().missing.empty();
        m_household->announce();
    }
    emit loaded();
    return done.ok();
}

} // namespace lidlark::mobile
