#include "own_solids.h"

#include <algorithm>

namespace lidlark::mobile {

namespace {

constexpr int mostThatComesOff = 6; ///< As the loader has it.

} // namespace

OwnSolids::OwnSolids(Sort sort, QObject *parent) : QAbstractListModel(parent), m_sort(sort) {}

int OwnSolids::most() const
{
    return m_sort == Parts ? mostThatComesOff : 1;
}

QStringList OwnSolids::shapes() const
{
    QStringList names{tr("A ball"), tr("A disc"), tr("A rod"), tr("A block"), tr("An egg")};
    if (m_sort == Whole)
        names.append(tr("Soft, of no size"));
    return names;
}

int OwnSolids::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_solids.size());
}

QVariant OwnSolids::data(const QModelIndex &index, int role) const
{
    if (!has(index.row()))
        return {};
    const TypedSolid &solid = m_solids[static_cast<std::size_t>(index.row())];
    switch (role) {
    case ShapeRole:
        return solid.shape;
    case LabelsRole:
        return sizeLabels(solid.shape);
    case SizesRole:
        return solid.mm;
    case ProblemsRole:
        return QStringList{sizeProblem(solid, 0), sizeProblem(solid, 1), sizeProblem(solid, 2)};
    case PartRole:
        return solid.part;
    case CupRole:
        return solid.cup;
    default:
        return {};
    }
}

QHash<int, QByteArray> OwnSolids::roleNames() const
{
    return {{ShapeRole, "shape"},       {LabelsRole, "labels"}, {SizesRole, "sizes"},
            {ProblemsRole, "problems"}, {PartRole, "part"},     {CupRole, "cup"}};
}

void OwnSolids::show(std::vector<TypedSolid> solids)
{
    beginResetModel();
    m_solids = std::move(solids);
    endResetModel();
    emit edited();
}

bool OwnSolids::isUnread() const
{
    return std::ranges::any_of(m_solids, [](const TypedSolid &solid) {
        return solid.shape != static_cast<int>(TypedShape::Soft) && !solidOf(solid);
    });
}

void OwnSolids::changed(int row, const QList<int> &roles)
{
    emit dataChanged(index(row), index(row), roles);
    emit edited();
}

void OwnSolids::add()
{
    if (rowCount() >= most())
        return;
    beginInsertRows({}, rowCount(), rowCount());
    m_solids.emplace_back();
    endInsertRows();
    emit edited();
}

void OwnSolids::takeOut(int row)
{
    if (!has(row))
        return;
    beginRemoveRows({}, row, row);
    m_solids.erase(m_solids.begin() + row);
    endRemoveRows();
    emit edited();
}

void OwnSolids::choose(int row, int shape)
{
    if (!has(row) || shape < 0 || shape >= shapes().size())
        return;
    at(row).shape = shape;
    changed(row, {ShapeRole, LabelsRole, ProblemsRole});
}

/// The field that is written in has the words already: nobody else shows them.
void OwnSolids::write(int row, int place, const QString &text)
{
    if (!has(row) || place < 0 || place >= at(row).mm.size() || at(row).mm[place] == text)
        return;
    at(row).mm[place] = text;
    changed(row, {ProblemsRole});
}

void OwnSolids::call(int row, const QString &part)
{
    if (!has(row) || at(row).part == part)
        return;
    at(row).part = part;
    emit edited();
}

void OwnSolids::turnCup(int row)
{
    if (!has(row))
        return;
    at(row).cup = !at(row).cup;
    changed(row, {CupRole});
}

} // namespace lidlark::mobile
