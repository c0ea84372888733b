#include "build_box_view_model.h"

#include "core/wording/build_words.h"
#include "mobile/bridge/letters.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

using workbench::BoxPart;
using workbench::Departure;

void BuildBoxViewModel::setHousehold(Household *household)
{
    m_household = household;
    m_names = boughtNames(*household);
    read();
}

QString BuildBoxViewModel::build() const
{
    return fromCore(m_build.value);
}

void BuildBoxViewModel::setBuild(const QString &build)
{
    m_build = {toCore(build)};
    read();
}

QString BuildBoxViewModel::code() const
{
    return fromCore(m_code);
}

void BuildBoxViewModel::setCode(const QString &code)
{
    m_code = toCore(code);
    read();
}

void BuildBoxViewModel::read()
{
    if (m_household == nullptr || m_build.empty() || m_code.empty())
        return;
    const auto sheet = usecase::buildSheetOf(m_household->workplace(), m_build);
    const workbench::KeptBox *box = sheet ? sheet->build.box(m_code) : nullptr;
    m_kept = box != nullptr ? *box : workbench::KeptBox();
    m_box = m_kept;
    m_children = childrenOn(*m_household);
    for (const workbench::KeptBox &other :
         sheet ? sheet->build.boxes : std::vector<workbench::KeptBox>()) {
        if (other.box.code != m_code)
            m_children.removeAll(fromCore(other.box.whose));
    }
    const workbench::Designs designs = designsOn(*m_household);
    const auto found = designs.find(m_kept.box.design);
    m_design = found != designs.end() ? found->second : workbench::Design();
    beginResetModel();
    m_rows = rowsOf();
    endResetModel();
    emit loaded();
}

/// In the order of the design, what was added last.
std::vector<BuildBoxViewModel::Row> BuildBoxViewModel::rowsOf() const
{
    std::vector<Row> rows;
    for (const BoxPart &part : m_design.parts)
        rows.push_back({part.item, part.pieces});
    for (const BoxPart &part : m_box.box.parts) {
        const ItemId &of = part.insteadOf.empty() ? part.item : part.insteadOf;
        if (std::ranges::find(rows, of, &Row::item) == rows.end())
            rows.push_back({of, 0});
    }
    return rows;
}

void BuildBoxViewModel::tell()
{
    renewRows([this] { m_rows = rowsOf(); });
    emit loaded();
}

QStringList BuildBoxViewModel::rowKeys() const
{
    QStringList keys;
    for (const Row &row : m_rows)
        keys.append(fromCore(row.item.value));
    return keys;
}

std::size_t BuildBoxViewModel::placeOf(const Row &row) const
{
    const auto found = std::ranges::find_if(m_box.box.parts, [&](const BoxPart &part) {
        return (part.insteadOf.empty() ? part.item : part.insteadOf) == row.item;
    });
    return static_cast<std::size_t>(found - m_box.box.parts.begin());
}

const BoxPart *BuildBoxViewModel::partFor(const Row &row) const
{
    const std::size_t place = placeOf(row);
    return place < m_box.box.parts.size() ? &m_box.box.parts[place] : nullptr;
}

BoxPart *BuildBoxViewModel::partFor(const Row &row)
{
    const std::size_t place = placeOf(row);
    return place < m_box.box.parts.size() ? &m_box.box.parts[place] : nullptr;
}

bool BuildBoxViewModel::isOtherHandAlone(const BoxPart &part) const
{
    return !part.insteadOf.empty() &&
           workbench::kindOf(part.item) == workbench::kindOf(part.insteadOf);
}

bool BuildBoxViewModel::differs(const Row &row) const
{
    const BoxPart *part = partFor(row);
    if (m_design.id.empty())
        return part != nullptr && !part->insteadOf.empty() && !isOtherHandAlone(*part);
    if (part == nullptr || row.usual == 0)
        return true;
    return part->pieces != row.usual || (!part->insteadOf.empty() && !isOtherHandAlone(*part));
}

QString BuildBoxViewModel::stateOf(const Row &row) const
{
    const BoxPart *part = partFor(row);
    if (part == nullptr)
        return tr("Left out");
    if (row.usual == 0 && part->insteadOf.empty())
        return m_design.id.empty() ? QString() : tr("Added");
    if (!part->insteadOf.empty())
        return tr("Instead of %1").arg(fromCore(m_names(row.item)));
    return row.usual > 0 && part->pieces != row.usual ? tr("Usually %1").arg(numerals(row.usual))
                                                      : QString();
}

const catalogue::ItemKind *BuildBoxViewModel::swapOf(const Row &row) const
{
    const auto *kind = m_household->catalogue().item(workbench::kindOf(row.item));
    return kind != nullptr && kind->swap ? m_household->catalogue().item(kind->swap->with)
                                         : nullptr;
}

const Departure *BuildBoxViewModel::reasonOf(const ItemId &item) const
{
    const auto &all = m_box.personal.departures;
    const auto found = std::ranges::find(all, item, &Departure::item);
    return found != all.end() ? &*found : nullptr;
}

Departure &BuildBoxViewModel::reasonFor(const ItemId &item)
{
    auto &all = m_box.personal.departures;
    const auto found = std::ranges::find(all, item, &Departure::item);
    return found != all.end() ? *found
                              : all.emplace_back(Departure{item, workbench::Why::Home, {}});
}

int BuildBoxViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant BuildBoxViewModel::data(const QModelIndex &index, int role) const
{
    if (!isRow(index.row()))
        return {};
    const Row &row = rowAt(index.row());
    const BoxPart *part = partFor(row);
    const ItemId &shown = part != nullptr ? part->item : row.item;
    const Departure *reason = reasonOf(row.item);
    switch (role) {
    case ItemIdRole:
        return fromCore(row.item.value);
    case NameRole:
        return boughtName(m_names, shown);
    case DrawingRole:
        return clinicDrawing(*m_household, shown);
    case PiecesRole:
        return part != nullptr ? part->pieces : 0;
    case StateRole:
        return stateOf(row);
    case DiffersRole:
        return differs(row);
    case ReasonRole:
        return reason != nullptr ? fromCore(workbench::whyNames.of(reason->why)) : QString();
    case WordsRole:
        return reason != nullptr ? fromCore(reason->words) : QString();
    case SwapNameRole: {
        const auto *swap = swapOf(row);
        return swap != nullptr ? fromCore(swap->name) : QString();
    }
    case SwappedRole:
        return part != nullptr && !part->insteadOf.empty();
    default:
        return {};
    }
}

QHash<int, QByteArray> BuildBoxViewModel::roleNames() const
{
    return {{ItemIdRole, "itemId"},    {NameRole, "name"},         {DrawingRole, "drawing"},
            {PiecesRole, "pieces"},    {StateRole, "stateWords"},  {DiffersRole, "differs"},
            {ReasonRole, "reason"},    {WordsRole, "reasonWords"}, {SwapNameRole, "swapName"},
            {SwappedRole, "isSwapped"}};
}

QString BuildBoxViewModel::whose() const
{
    return fromCore(m_box.box.whose);
}

QString BuildBoxViewModel::avoidWords() const
{
    QStringList words;
    if (m_box.personal.avoids.contains(child::Avoided::Latex))
        words.append(tr("No latex may go in."));
    if (m_box.personal.avoids.contains(child::Avoided::Wheat))
        words.append(tr("No wheat may go in."));
    return words.join(u' ');
}

QString BuildBoxViewModel::hand() const
{
    return m_box.personal.hand == workbench::Hand::Unsaid
               ? QString()
               : fromCore(workbench::handNames.of(m_box.personal.hand));
}

QStringList BuildBoxViewModel::reasonIds()
{
    QStringList ids;
    for (const std::string_view id : workbench::whyNames.names)
        ids.append(fromCore(id));
    return ids;
}

QStringList BuildBoxViewModel::reasonNames()
{
    // In the order of workbench::Why.
    return {tr("Hand"), tr("Allergy"), tr("Home"), tr("Goal"), tr("Mouth"), tr("Age")};
}

bool BuildBoxViewModel::has(const QString &itemId) const
{
    const ItemId item{toCore(itemId)};
    return std::ranges::find(m_box.box.parts, item, &BoxPart::item) != m_box.box.parts.end() ||
           std::ranges::find(m_design.parts, item, &BoxPart::item) != m_design.parts.end();
}

} // namespace lidlark::mobile
