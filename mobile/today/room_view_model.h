#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include "core/safety/room.h"

#include "mobile/bridge/household.h"
#include "mobile/bridge/sitting.h"

#include <optional>
#include <vector>

namespace lidlark::mobile {

/// Who is in the room: the people of the home sheet with who is here, and what else is asked.
class RoomViewModel : public QAbstractListModel
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household MEMBER m_household REQUIRED)
    Q_PROPERTY(lidlark::mobile::Sitting *sitting MEMBER m_sitting REQUIRED)
    Q_PROPERTY(bool visitorUnderThree READ visitorUnderThree NOTIFY changed FINAL)
    Q_PROPERTY(bool visitorMouther READ visitorMouther NOTIFY changed FINAL)
    Q_PROPERTY(bool besideSaid READ besideSaid NOTIFY changed FINAL)
    Q_PROPERTY(bool quietNow READ quietNow NOTIFY changed FINAL)
    /// 0 same room, 1 arm's reach, 2 right beside: the closest an adult can be.
    Q_PROPERTY(int adultCanBe READ adultCanBe NOTIFY changed FINAL)
    Q_PROPERTY(bool askWater READ askWater NOTIFY changed FINAL)

public:
    enum Role { NameRole = Qt::UserRole, NoteRole, HereRole };

    using QAbstractListModel::QAbstractListModel;
    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] bool visitorUnderThree() const { return m_room.visitorUnderThree; }
    [[nodiscard]] bool visitorMouther() const { return m_room.visitorMouther; }
    [[nodiscard]] bool besideSaid() const { return m_room.besideSaid; }
    [[nodiscard]] bool quietNow() const { return m_room.quietNow; }
    [[nodiscard]] int adultCanBe() const { return static_cast<int>(m_room.adultCanBe); }
    /// A child under three is here: water needs somebody right beside.
    [[nodiscard]] bool askWater() const;

    Q_INVOKABLE void load();
    Q_INVOKABLE void togglePerson(int row);
    Q_INVOKABLE void toggleVisitorUnderThree();
    Q_INVOKABLE void toggleVisitorMouther();
    Q_INVOKABLE void toggleBesideSaid();
    Q_INVOKABLE void toggleQuietNow();
    Q_INVOKABLE void setAdultCanBe(int level);
    /// Who is shown as here is here: the answer, even when nothing was changed.
    Q_INVOKABLE void confirm();
    /// Only this child and the adult who holds the phone.
    Q_INVOKABLE void nobodyElse();

signals:
    void changed();

private:
    [[nodiscard]] bool isHere(const child::Person &person) const;
    [[nodiscard]] std::vector<PersonId> peopleHere() const;
    void keep();

    Household *m_household = nullptr;
    Sitting *m_sitting = nullptr;
    std::optional<child::HomeSheet> m_sheet;
    std::vector<child::Person> m_others; ///< Children and adults besides the playing child.
    std::optional<child::Child> m_child;
    safety::Room m_room;
};

} // namespace lidlark::mobile
