#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"
#include "mobile/bridge/sitting.h"

#include <vector>

namespace lidlark::mobile {

/// The things whose name holds what is searched for: where each one is, and why it stays away.
/// Nothing is searched for: no rows.
class ThingsFound : public QAbstractListModel
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household MEMBER m_household REQUIRED)
    Q_PROPERTY(lidlark::mobile::Sitting *sitting MEMBER m_sitting REQUIRED)
    Q_PROPERTY(QString searched READ searched WRITE setSearched NOTIFY refreshed FINAL)
    Q_PROPERTY(int count READ count NOTIFY refreshed FINAL)

public:
    enum Role { ItemIdRole = Qt::UserRole, NameRole, NoteRole, DrawingRole, InBoxRole };

    using QAbstractListModel::QAbstractListModel;
    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] QString searched() const { return m_searched; }
    void setSearched(const QString &text);
    [[nodiscard]] int count() const { return rowCount(); }

    Q_INVOKABLE void refresh();

signals:
    void refreshed();

private:
    void arrange();
    [[nodiscard]] QString noteOf(const usecase::ItemStanding &standing) const;

    Household *m_household = nullptr;
    Sitting *m_sitting = nullptr;
    QString m_searched;
    std::vector<usecase::ItemStanding> m_all;
    std::vector<usecase::ItemStanding> m_rows;
};

} // namespace lidlark::mobile
