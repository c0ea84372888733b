#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

namespace lidlark::mobile {

/// The languages the app can be read in, each named in itself.
class LanguageChoices : public QAbstractListModel
{
    Q_OBJECT
    QML_ELEMENT

public:
    enum Role { CodeRole = Qt::UserRole, NameRole, UncheckedRole, NaskhRole };

    using QAbstractListModel::QAbstractListModel;
    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    /// Nobody has checked the words of that language yet.
    Q_INVOKABLE bool isUnchecked(const QString &code) const;
};

} // namespace lidlark::mobile
