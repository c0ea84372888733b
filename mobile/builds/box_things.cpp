#include "box_things.h"

#include "mobile/bridge/text.h"

namespace lidlark::mobile {

void BoxThings::setHousehold(Household *household)
{
    beginResetModel();
    m_household = household;
    m_things = thingsForBoxes(*household);
    m_names = boughtNames(*household);
    endResetModel();
}

int BoxThings::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_things.size());
}

QVariant BoxThings::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const ItemId &item = m_things[static_cast<std::size_t>(index.row())];
    switch (role) {
    case ItemIdRole:
        return fromCore(item.value);
    case NameRole:
        return boughtName(m_names, item);
    case DrawingRole:
        return clinicDrawing(*m_household, item);
    default:
        return {};
    }
}

QHash<int, QByteArray> BoxThings::roleNames() const
{
    return {{ItemIdRole, "itemId"}, {NameRole, "name"}, {DrawingRole, "drawing"}};
}

} // namespace lidlark::mobile
