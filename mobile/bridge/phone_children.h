#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include "core/usecase/families.h"

#include <vector>

namespace lidlark::mobile {

/// Everybody with a box on this phone: one tap on a row changes child and family. Made by
/// `Household`.
class PhoneChildren : public QAbstractListModel
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Made by the household")

public:
    enum Role { AliasRole = Qt::UserRole, LabelRole, FamilyRole, PickedRole };

    using QAbstractListModel::QAbstractListModel;
    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    void show(std::vector<usecase::ChildOnPhone> children);
    /// Whose box is on the table.
    void pick(const std::string &family, const QString &alias);
    /// "Fin", or "Fin, with Ruth" where another family's child has that alias; empty: nobody yet.
    [[nodiscard]] QString pickedLabel() const;

private:
    [[nodiscard]] static QString labelOf(const usecase::ChildOnPhone &child);
    [[nodiscard]] bool isPicked(const usecase::ChildOnPhone &child) const;

    std::vector<usecase::ChildOnPhone> m_children;
    std::string m_family;
    std::string m_alias;
};

} // namespace lidlark::mobile
