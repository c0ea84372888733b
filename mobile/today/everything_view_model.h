#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"
#include "mobile/bridge/play_in_hand.h"
#include "mobile/bridge/sitting.h"

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
    Q_PROPERTY(lidlark::mobile::PlayInHand *playInHand MEMBER m_playInHand REQUIRED)
    /// Only entries whose name, item or skill contains this.
    Q_PROPERTY(QString searched READ searched WRITE setSearched NOTIFY refreshed FINAL)
    Q_PROPERTY(int count READ count NOTIFY refreshed FINAL)
    /// The first so many rows may be played now; the others are held back.
    Q_PROPERTY(int countAllowed READ countAllowed NOTIFY refreshed FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY refreshed FINAL)

public:
    enum Role { ActivityIdRole = Qt::UserRole, NameRole, NoteRole, DrawingRole, AllowedRole };

    using QAbstractListModel::QAbstractListModel;
    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] QString searched() const { return m_searched; }
    void setSearched(const QString &text);
    [[nodiscard]] int count() const { return rowCount(); }
    [[nodiscard]] int countAllowed() const;
    [[nodiscard]] QString problem() const { return m_problem; }

    Q_INVOKABLE void refresh();
    /// Begins an entry that may be played now. @returns false for any other.
    Q_INVOKABLE bool begin(const QString &activityId);

signals:
    void refreshed();

private:
    struct Row {
        const catalogue::Activity *activity = nullptr;
        QString note;
        bool allowed = false;
    };
    [[nodiscard]] bool matches(const catalogue::Activity &activity) const;
    [[nodiscard]] QString reasonsOf(const safety::HeldBack &held) const;
    void arrange();

    Household *m_household = nullptr;
    Sitting *m_sitting = nullptr;
    PlayInHand *m_playInHand = nullptr;
    safety::Gated m_gated;
    QString m_searched;
    QString m_problem;
    std::vector<Row> m_all;
    std::vector<Row> m_rows;
};

} // namespace lidlark::mobile
