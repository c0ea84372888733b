#pragma once

#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/kept_rows.h"
#include "mobile/bridge/video_desk.h"

#include <map>
#include <optional>

namespace lidlark::mobile {

/// What the therapist is about to plan for the child on the table: an arc that the menu's solver
/// suggests, place by place, and a spare. Each place can be filled with another.
class VideoPlanViewModel : public lidlark::mobile::KeptRows
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    /// Days from today on, 0 to `lastDay`.
    Q_PROPERTY(int inDays READ inDays WRITE setInDays NOTIFY loaded FINAL)
    Q_PROPERTY(int lastDay READ lastDay CONSTANT FINAL)
    Q_PROPERTY(QString dayWords READ dayWords NOTIFY loaded FINAL)
    Q_PROPERTY(
        int quarter READ quarter WRITE setQuarter NOTIFY loaded FINAL) ///< Of the day, 0 to 95.
    Q_PROPERTY(QString timeWords READ timeWords NOTIFY loaded FINAL)
    /// Which lid list it is made from, and whether they have confirmed it.
    Q_PROPERTY(QString listNote READ listNote NOTIFY loaded FINAL)
    /// What is planned already, a line each, the next first.
    Q_PROPERTY(QList<QString> planned READ planned NOTIFY loaded FINAL)
    Q_PROPERTY(bool canSend READ canSend NOTIFY loaded FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    enum Role { PlaceRole = Qt::UserRole, NameRole, DrawingRole, NoteRole, OthersRole };

    using KeptRows::KeptRows;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] int inDays() const { return m_inDays; }
    void setInDays(int days);
    [[nodiscard]] int lastDay() const { return 27; }
    [[nodiscard]] QString dayWords() const;
    [[nodiscard]] int quarter() const { return m_quarter; }
    void setQuarter(int quarter);
    [[nodiscard]] QString timeWords() const;
    [[nodiscard]] QString listNote() const;
    [[nodiscard]] QStringList planned() const;
    [[nodiscard]] bool canSend() const;
    [[nodiscard]] QString problem() const { return m_problem; }

    /// The next that may stand there, round and round.
    Q_INVOKABLE void another(int row);
    /// @returns whether it was written.
    Q_INVOKABLE bool send();
    Q_INVOKABLE void callOff(int line);

signals:
    void loaded();

protected:
    [[nodiscard]] QStringList rowKeys() const override;

private:
    /// A place of the plan; nothing stands for the spare.
    struct Place {
        std::optional<rotation::ArcPlace> at;
        ActivityId activity;
    };
    void load();
    void read();
    [[nodiscard]] Day day() const;
    [[nodiscard]] std::vector<ActivityId> fitting(const Place &place) const;
    [[nodiscard]] workbench::VideoPlan plan() const;

    Household *m_household = nullptr;
    std::optional<usecase::VideoChoices> m_choices;
    std::vector<Place> m_places;
    std::vector<usecase::VideoSession> m_sessions;
    std::optional<Day> m_placesOf; ///< The day that the places were suggested for.
    int m_inDays = 7;
    int m_quarter = 40;
    QString m_problem;
};

} // namespace lidlark::mobile
