#pragma once

#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"

#include <QAbstractListModel>

#include <vector>

namespace lidlark::mobile {

/// What the catalogue has for a box: what may be put in, and what may not, with the reason and what
/// stands in for it.
class AdditionViewModel : public QAbstractListModel
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)

public:
    enum Role {
        ItemIdRole = Qt::UserRole,
        NameRole,
        DrawingRole,
        NoteRole,   ///< "In place of rubber bands"; empty: stands in for nothing.
        RefusedRole ///< Why it may not go in; empty: it may.
    };

    using QAbstractListModel::QAbstractListModel;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);
    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

private:
    [[nodiscard]] QString standsInFor(const catalogue::ItemKind &kind) const;
    [[nodiscard]] QString refusal(const catalogue::ItemKind &kind) const;

    Household *m_household = nullptr;
    catalogue::TagSet m_avoided;
    std::vector<const catalogue::ItemKind *> m_kinds;
};

} // namespace lidlark::mobile
