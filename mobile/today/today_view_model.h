#pragma once

#include <QAbstractListModel>
#include <QQmlParserStatus>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"
#include "mobile/bridge/play_in_hand.h"
#include "mobile/bridge/sitting.h"

#include <optional>
#include <vector>

namespace lidlark::mobile {

/// The offers of this part of the day, in the menu's order, and the few sentences around them.
/// It decides nothing: the menu comes from the core, and only what the core has admitted can begin.
/// Asked once when made, and once after each change of the sitting or of what is known.
class TodayViewModel : public QAbstractListModel, public QQmlParserStatus
{
    Q_OBJECT
    QML_ELEMENT
    Q_INTERFACES(QQmlParserStatus)
    Q_PROPERTY(lidlark::mobile::Household *household MEMBER m_household REQUIRED)
    Q_PROPERTY(lidlark::mobile::Sitting *sitting MEMBER m_sitting REQUIRED)
    Q_PROPERTY(lidlark::mobile::PlayInHand *playInHand MEMBER m_playInHand REQUIRED)
    Q_PROPERTY(QString dayWords READ dayWords NOTIFY refreshed FINAL) ///< "Monday evening".
    /// Who is in the room: the child, then those for whom something stays away, then the others.
    Q_PROPERTY(QList<QString> roomNames READ roomNames NOTIFY refreshed FINAL)
    Q_PROPERTY(QString kiteName READ kiteName NOTIFY refreshed FINAL)   ///< Empty: not asked.
    Q_PROPERTY(QString kiteNote READ kiteNote NOTIFY refreshed FINAL)   ///< Who showed it, when.
    Q_PROPERTY(QString guessName READ guessName NOTIFY refreshed FINAL) ///< The adult's own guess.
    /// What an adult needs to read before play ("... skip play and get advice").
    Q_PROPERTY(QString kiteCaution READ kiteCaution NOTIFY refreshed FINAL)
    /// What an adult may want to read beside the offers.
    Q_PROPERTY(QString kiteAdvice READ kiteAdvice NOTIFY refreshed FINAL)
    Q_PROPERTY(QList<QString> filtersOn READ filtersOn NOTIFY refreshed FINAL)
    /// What gave way, a sentence each.
    Q_PROPERTY(QList<QString> gaveWay READ gaveWay NOTIFY refreshed FINAL)
    /// What an adult has kept for today, that fits who is here, and that is not offered anyway;
    /// empty: nothing, or played.
    Q_PROPERTY(QString planned READ planned NOTIFY refreshed FINAL)
    /// "Monday 25 January, 10:00": the next video session of this home, within a week; empty: none.
    Q_PROPERTY(QString videoSession READ videoSession NOTIFY refreshed FINAL)
    /// With fewer than three offers: what would bring more.
    Q_PROPERTY(QString help READ help NOTIFY refreshed FINAL)
    /// A small piece may lie on a floor.
    Q_PROPERTY(bool floorNote READ floorNote NOTIFY refreshed FINAL)
    /// Things of the box must still leave the house.
    Q_PROPERTY(bool mustLeave READ mustLeave NOTIFY refreshed FINAL)
    /// The box is said to be elsewhere: "at Mum's". Empty: here.
    Q_PROPERTY(QString boxPlace READ boxPlace NOTIFY refreshed FINAL)
    /// Who said so, and when: "Kirsty, Sunday".
    Q_PROPERTY(QString boxPlaceSaidBy READ boxPlaceSaidBy NOTIFY refreshed FINAL)
    /// Something here was written with care but not yet checked by a clinician.
    Q_PROPERTY(bool unchecked READ unchecked NOTIFY refreshed FINAL)
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

    void classBegin() override {}
    void componentComplete() override;

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] QString dayWords() const;
    [[nodiscard]] QStringList roomNames() const;
    [[nodiscard]] QString kiteName() const;
    [[nodiscard]] QString kiteNote() const;
    [[nodiscard]] QString guessName() const;
    [[nodiscard]] QString kiteCaution() const;
    [[nodiscard]] QString kiteAdvice() const;
    [[nodiscard]] QStringList filtersOn() const;
    [[nodiscard]] QStringList gaveWay() const;
    [[nodiscard]] QString planned() const;
    [[nodiscard]] QString videoSession() const;
    [[nodiscard]] QString help() const;
    [[nodiscard]] bool floorNote() const;
    [[nodiscard]] bool mustLeave() const;
    [[nodiscard]] QString boxPlace() const;
    [[nodiscard]] QString boxPlaceSaidBy() const;
    [[nodiscard]] bool unchecked() const;
    [[nodiscard]] int count() const { return rowCount(); }
    [[nodiscard]] QString problem() const { return m_problem; }

    /// Asks the core for the menu as the sitting stands now.
    Q_INVOKABLE void refresh();
    /// The next best three, none of those shown so far; back to the first when nothing is left.
    Q_INVOKABLE void threeOthers();
    /// Begins one of the offers. @returns false when it could not be kept.
    Q_INVOKABLE bool begin(const QString &activityId);
    /// Begins what was kept for today.
    Q_INVOKABLE bool beginPlanned();
    /// Begins something at random; never the same twice running.
    Q_INVOKABLE bool beginAnything();
    /// "no-table", "no-mess", "quiet", "one-hand", "tired", "away", "ill".
    Q_INVOKABLE void toggleFilter(const QString &name);

signals:
    void refreshed();

private:
    [[nodiscard]] const safety::Admitted *plannedToday() const;
    [[nodiscard]] bool isOffered(const ActivityId &id) const;
    [[nodiscard]] const rotation::Offer *offerAt(const QModelIndex &index) const;
    [[nodiscard]] std::optional<checkin::Kite> kite() const;
    [[nodiscard]] bool boxIsElsewhere() const;
    void refreshSoon();

    Household *m_household = nullptr;
    Sitting *m_sitting = nullptr;
    PlayInHand *m_playInHand = nullptr;
    std::optional<usecase::TodayMenu> m_today;
    QStringList m_whyLines; ///< One an offer.
    bool m_refreshComing = false;
    QString m_problem;
};

} // namespace lidlark::mobile
