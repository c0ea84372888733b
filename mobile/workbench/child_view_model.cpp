#include "child_view_model.h"

#include "matter_words.h"

#include "core/wording/count_words.h"
#include "mobile/bridge/letters.h"
#include "mobile/bridge/new_list.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/shared_lines.h"
#include "mobile/bridge/text.h"
#include "mobile/bridge/workbench_desk.h"

namespace lidlark::mobile {

void ChildViewModel::setHousehold(Household *household)
{
    m_household = household;
    connect(household, &Household::changed, this, &ChildViewModel::load);
    connect(household, &Household::childChanged, this, &ChildViewModel::load);
    load();
}

void ChildViewModel::load()
{
    readMatters();
    m_shared = sharedLines(*m_household);
    renewRows([this] { readRows(); });
    emit loaded();
}

void ChildViewModel::readMatters()
{
    using wording::BoxMatter;
    m_matters.clear();
    m_matterLines.clear();
    m_change.clear();
    const auto health = boxHealth(*m_household);
    m_problem = health ? QString() : m_household->sentenceFor(health.error());
    if (!health)
        return;
    for (const BoxMatter matter : mattersOf(*health)) {
        m_matters.append(translated(wording::boxMatter(matter)));
        m_matterLines.append(linesOf(*m_household, *health, matter).join(u'\n'));
    }
    const auto state = newList(*m_household);
    if (state && !health->awaitsConfirmation())
        m_change = revisionLines(*m_household, *state).join(u'\n');
}

void ChildViewModel::readRows()
{
    const auto family = m_household->family();
    m_number = family && family->revision ? family->revision->revision.number : 0;
    m_items = m_household->boxItems();
    std::erase_if(m_items, [](const usecase::BoxItem &item) { return item.row.expected == 0; });
}

QString ChildViewModel::listWords() const
{
    return m_number > 0 ? tr("Lid list R%1").arg(m_number) : QString();
}

QStringList ChildViewModel::rowKeys() const
{
    QStringList keys;
    keys.reserve(static_cast<qsizetype>(m_items.size()));
    for (const usecase::BoxItem &item : m_items)
        keys.append(fromCore(item.row.item.value));
    return keys;
}

int ChildViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_items.size());
}

QVariant ChildViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const usecase::BoxItem &item = m_items[static_cast<std::size_t>(index.row())];
    switch (role) {
    case ItemIdRole:
        return fromCore(item.row.item.value);
    case NameRole:
        return capitalised(fromCore(item.kind != nullptr ? item.kind->name : item.row.item.value));
    case DrawingRole:
        return fromCore(item.kind != nullptr ? item.kind->drawing : std::string());
    case NoteRole:
        return tr("%1 on the list, %2 in the box")
            .arg(numerals(item.row.expected),
                 translated(wording::rangeWords(item.row.low, item.row.high)));
    default:
        return {};
    }
}

QHash<int, QByteArray> ChildViewModel::roleNames() const
{
    return {
        {ItemIdRole, "itemId"}, {NameRole, "name"}, {DrawingRole, "drawing"}, {NoteRole, "note"}};
}

} // namespace lidlark::mobile
