#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include "core/usecase/suggest_today.h"

#include "mobile/bridge/household.h"
#include "mobile/bridge/sitting.h"

#include <optional>
#include <vector>

namespace lidlark::mobile {

/// The whole collection for adults: what may be played now, and what is held back with its reason.
/// Never part of a child's view.
class EverythingViewModel : public QAbstractListModel
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household MEMBER m_household REQUIRED)
    Q_PROPERTY(lidlark::mobile::Sitting *sitting MEMBER m_sitting REQUIRED)
    /// Only entries whose name, item or skill contains this.
    Q_PROPERTY(QString searched READ searched WRITE setSearched NOTIFY refreshed FINAL)
    Q_PROPERTY(int count READ count NOTIFY refreshed FINAL)

public:
    enum Role { ActivityIdRole = Qt::UserRole, NameRole, NoteRole, DrawingRole, AllowedRole };

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
    struct Row {
        const catalogue::Activity *activity = nullptr;
        QString note;
        bool allowed = false;
    };
    [[nodiscard]] bool matches(const catalogue::Activity &activity) const;
    void arrange();

    Household *m_household = nullptr;
    Sitting *m_sitting = nullptr;
    QString m_searched;
    std::vector<Row> m_all;
    std::vector<Row> m_rows;
};

} // namespace lidlark::mobile
