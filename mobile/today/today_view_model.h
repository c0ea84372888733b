#pragma once

#include <QAbstractListModel>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "core/usecase/suggest_today.h"

#include "mobile/bridge/household.h"
#include "mobile/bridge/play_in_hand.h"
#include "mobile/bridge/sitting.h"

#include <optional>

namespace lidlark::mobile {

/// The offers of this part of the day, in the menu's order, and the few sentences around them.
/// It decides nothing: the menu comes from the core, and only what the core has admitted can begin.
class TodayViewModel : public QAbstractListModel
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household MEMBER m_household REQUIRED)
    Q_PROPERTY(lidlark::mobile::Sitting *sitting MEMBER m_sitting REQUIRED)
    Q_PROPERTY(lidlark::mobile::PlayInHand *playInHand MEMBER m_playInHand REQUIRED)
    Q_PROPERTY(QString dayWords READ dayWords NOTIFY refreshed FINAL) ///< "Monday evening".
    Q_PROPERTY(QStringList roomNames READ roomNames NOTIFY refreshed FINAL)
    Q_PROPERTY(QString kiteName READ kiteName NOTIFY refreshed FINAL)     ///< Empty: not asked.
    Q_PROPERTY(QString kiteAdvice READ kiteAdvice NOTIFY refreshed FINAL) ///< For the adult.
    Q_PROPERTY(QStringList filtersOn READ filtersOn NOTIFY refreshed FINAL)
    /// What gave way, a sentence each.
    Q_PROPERTY(QStringList gaveWay READ gaveWay NOTIFY refreshed FINAL)
    /// A small piece may lie on a floor.
    Q_PROPERTY(bool floorNote READ floorNote NOTIFY refreshed FINAL)
    /// The box is said to be elsewhere: "at Mum's". Empty: here.
    Q_PROPERTY(QString boxPlace READ boxPlace NOTIFY refreshed FINAL)
    /// Something here was written with care but not yet checked by a clinician.
    Q_PROPERTY(bool unchecked READ unchecked NOTIFY refreshed FINAL)
    Q_PROPERTY(bool showingOthers READ showingOthers NOTIFY refreshed FINAL)
    Q_PROPERTY(int count READ count NOTIFY refreshed FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY refreshed FINAL)

public:
    enum Role {
        ActivityIdRole = Qt::UserRole,
        NameRole,
        WhyRole,
        SupervisionRole,
        DrawingRole,
        DrawingAltRole,
        InviteRole,
        MinutesOutRole,
        MinutesPlayRole,
        MinutesBackRole
    };

    using QAbstractListModel::QAbstractListModel;

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] QString dayWords() const;
    [[nodiscard]] QStringList roomNames() const;
    [[nodiscard]] QString kiteName() const;
    [[nodiscard]] QString kiteAdvice() const;
    [[nodiscard]] QStringList filtersOn() const;
    [[nodiscard]] QStringList gaveWay() const;
    [[nodiscard]] bool floorNote() const;
    [[nodiscard]] QString boxPlace() const;
    [[nodiscard]] bool unchecked() const;
    [[nodiscard]] bool showingOthers() const { return !m_without.empty(); }
    [[nodiscard]] int count() const { return rowCount(); }
    [[nodiscard]] QString problem() const { return m_problem; }

    /// Asks the core for the menu as the sitting stands now.
    Q_INVOKABLE void refresh();
    /// The next best three, none of those shown so far; back to the first when nothing is left.
    Q_INVOKABLE void threeOthers();
    /// Begins one of the offers. @returns false when it could not be kept.
    Q_INVOKABLE bool begin(const QString &activityId);
    /// Begins something at random; never the same twice running.
    Q_INVOKABLE bool beginAnything();
    /// "no-table", "no-mess", "quiet", "one-hand", "tired", "away", "ill".
    Q_INVOKABLE void toggleFilter(const QString &name);
    /// The notice has been read: not shown again today.
    Q_INVOKABLE void hideUnchecked();

signals:
    void refreshed();

private:
    [[nodiscard]] const rotation::Offer *offerAt(const QModelIndex &index) const;
    void ask();

    Household *m_household = nullptr;
    Sitting *m_sitting = nullptr;
    PlayInHand *m_playInHand = nullptr;
    std::optional<usecase::TodayMenu> m_today;
    std::set<ActivityId> m_without;
    ActivityId m_lastAnything;
    QString m_problem;
};

} // namespace lidlark::mobile
