#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/buying_desk.h"

namespace lidlark::mobile {

/// What can be put into a box (`thingsForBoxes`): it stays while the page is open.
class BoxThings : public QAbstractListModel
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)

public:
    enum Role { ItemIdRole = Qt::UserRole, NameRole, DrawingRole };

    using QAbstractListModel::QAbstractListModel;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

private:
    Household *m_household = nullptr;
    std::vector<ItemId> m_things;
    BoughtNames m_names;
};

} // namespace lidlark::mobile
