#include "box_view_model.h"

#include "core/wording/day_words.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <algorithm>
#include <array>

namespace lidlark::mobile {

namespace {

/// An item keeps its well for good: this order, then anything else by name.
constexpr std::array wells{"card",           "lace",        "pegs",    "onepegs",     "scissors",
                           "springscissors", "eyes",        "lids",    "dough",       "ricedough",
                           "pieces",         "largeblocks", "pompoms", "fabricballs", "bands",
                           "loops",          "crayons",     "chunky",  "balloon",     "scarf",
                           "straw",          "ball",        "pouch",   "dropper",     "rband"};

std::size_t wellOf(const ItemId &item)
{
    const auto *found = std::find(wells.begin(), wells.end(), item.value);
    return static_cast<std::size_t>(found - wells.begin());
}

} // namespace

void BoxViewModel::setHousehold(Household *household)
{
    m_household = household;
    connect(household, &Household::changed, this, &BoxViewModel::load);
    load();
}

void BoxViewModel::load()
{
    beginResetModel();
    m_family.reset();
    m_counted.clear();
    m_floorNote = !m_household->floorSearch().missing.empty();
    m_mustLeave = false;
    m_outTags.clear();
    for (const usecase::TakeOut &takeOut : m_household->takeOuts()) {
        m_mustLeave = m_mustLeave || !takeOut.isDone();
        for (const usecase::TakeOutThing &thing : takeOut.things) {
            m_outTags[thing.item] = thing.out ? tr("taken out") : tr("take out");
            if (thing.asked)
                m_outTags[*thing.swap] = tr("asked for");
        }
    }
    auto family = m_household->family();
    if (family)
        m_family = *family;
    m_problem = family ? QString() : m_household->sentenceFor(family.error());
    if (m_family) {
        std::stable_sort(
            m_family->items.begin(), m_family->items.end(),
            [](const auto &a, const auto &b) { return wellOf(a.item) < wellOf(b.item); });
        for (const store::ItemRow &row : m_family->items)
            m_counted[row.item] = row.low;
    }
    endResetModel();
    emit loaded();
}

int BoxViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() || !m_family ? 0 : static_cast<int>(m_family->items.size());
}

QString BoxViewModel::tagOf(const store::ItemRow &row) const
{
    const catalogue::ItemKind *kind = m_household->catalogue().item(row.item);
    const auto out = m_outTags.find(row.item);
    if (out != m_outTags.end() && (kind == nullptr || row.expected > 0 || row.high == 0))
        return out->second;
    if (row.low != row.high)
        return tr("which?");
    if (row.pleaseCount)
        return tr("count it");
    if (row.out > 0)
        return tr("%1 out").arg(row.out);
    if (row.expected > 1 && row.low > 0 && row.low * 2 <= row.expected)
        return tr("low");
    return {};
}

QVariant BoxViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const store::ItemRow &row = m_family->items[static_cast<std::size_t>(index.row())];
    const catalogue::ItemKind *kind = m_household->catalogue().item(row.item);
    switch (role) {
    case ItemIdRole:
        return fromCore(row.item.value);
    case NameRole:
        return fromCore(kind != nullptr ? kind->name : row.item.value);
    case DrawingRole:
        return fromCore(kind != nullptr ? kind->drawing : std::string());
    case CountTextRole:
        if (row.high == 0)
            return tr("none");
        return row.low == row.high ? QString::number(row.low)
                                   : tr("%1 or %2").arg(row.low).arg(row.high);
    case TagRole:
        return tagOf(row);
    case NoneRole:
        return row.high == 0;
    case ExpectedRole:
        return row.expected;
    case CountedRole:
        return m_counted.at(row.item);
    case CareRole: {
        QStringList lines;
        for (const std::string &line : kind != nullptr ? kind->care : std::vector<std::string>())
            lines.append(fromCore(line));
        return lines;
    }
    default:
        return {};
    }
}

QHash<int, QByteArray> BoxViewModel::roleNames() const
{
    return {{ItemIdRole, "itemId"},       {NameRole, "name"},       {DrawingRole, "drawing"},
            {CountTextRole, "countText"}, {TagRole, "tag"},         {NoneRole, "none"},
            {ExpectedRole, "expected"},   {CountedRole, "counted"}, {CareRole, "care"}};
}

QString BoxViewModel::placeWords() const
{
    if (!m_family || !m_family->place)
        return tr("Nobody has said where it is");
    const box::Place &place = *m_family->place;
    const auto day = wording::dayWords(place.when.day, m_household->today().day);
    return tr("%1, says %2, %3")
        .arg(fromCore(wording::capital(place.words)), fromCore(place.author), translated(day));
}

QString BoxViewModel::revisionWords() const
{
    return m_family && m_family->revision
               ? tr("Lid list R%1").arg(m_family->revision->revision.number)
               : QString();
}

bool BoxViewModel::here() const
{
    return !m_family || !m_family->place || m_family->place->place == m_family->home.value;
}

void BoxViewModel::sayPlace(const QString &place)
{
    if (!m_family)
        return;
    const QString home = m_household->homeName();
    const QString words = place == QStringLiteral("school") ? tr("at school")
                          : place == QStringLiteral("away") ? tr("away from home")
                          : home.isEmpty()                  ? tr("at home")
                                                            : tr("at %1").arg(home.toLower());
    const std::string id = place == QStringLiteral("home") ? m_family->home.value : toCore(place);
    const Outcome done = m_household->sayPlace(id, toCore(words));
    m_household->announce();
    if (!done) {
        m_problem = m_household->sentenceFor(done.error());
        emit loaded();
    }
}

void BoxViewModel::setCounted(int row, int pieces)
{
    if (row < 0 || row >= rowCount() || pieces < 0)
        return;
    m_counted[m_family->items[static_cast<std::size_t>(row)].item] = pieces;
    emit dataChanged(index(row), index(row), {CountedRole});
}

bool BoxViewModel::keepCount()
{
    const Outcome done = m_household->countBox(m_counted);
    if (!done) {
        m_problem = m_household->sentenceFor(done.error());
        emit loaded();
        return false;
    }
    m_household->announce();
    return true;
}

} // namespace lidlark::mobile
