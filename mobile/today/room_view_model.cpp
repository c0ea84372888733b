#include "room_view_model.h"

#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

int RoomViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_others.size());
}

bool RoomViewModel::isHere(const child::Person &person) const
{
    return !m_room.present || std::find(m_room.present->begin(), m_room.present->end(),
                                        person.id) != m_room.present->end();
}

QVariant RoomViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const child::Person &person = m_others[static_cast<std::size_t>(index.row())];
    switch (role) {
    case NameRole:
        return fromCore(person.alias);
    case NoteRole:
        if (person.kind == child::PersonKind::Adult)
            return QString();
        if (safety::isMouther(person, m_household->today().day))
            return tr("puts things in the mouth");
        return safety::isUnderThree(person, m_household->today().day) ? tr("under three")
                                                                      : QString();
    case HereRole:
        return isHere(person);
    default:
        return {};
    }
}

QHash<int, QByteArray> RoomViewModel::roleNames() const
{
    return {{NameRole, "name"}, {NoteRole, "note"}, {HereRole, "here"}};
}

bool RoomViewModel::askWater() const
{
    if (!m_child)
        return false;
    const child::HomeSheet *home = m_sheet ? &*m_sheet : nullptr;
    return safety::companyIn(m_room, home, *m_child, m_household->today().day).underThree;
}

void RoomViewModel::load()
{
    beginResetModel();
    m_others.clear();
    m_sheet.reset();
    m_child.reset();
    m_room = m_sitting->room();
    if (const auto family = m_household->family()) {
        m_child = family->child;
        m_sheet = family->sheet;
    }
    if (m_sheet) {
        for (const child::Person &person : m_sheet->people) {
            if (person.id.value != m_child->id.value)
                m_others.push_back(person);
        }
    }
    // Children first: they decide what may come out.
    std::stable_partition(m_others.begin(), m_others.end(), [](const child::Person &person) {
        return person.kind == child::PersonKind::Child;
    });
    endResetModel();
    emit changed();
}

std::vector<PersonId> RoomViewModel::peopleHere() const
{
    std::vector<PersonId> here;
    for (const child::Person &person : m_others) {
        if (isHere(person))
            here.push_back(person.id);
    }
    return here;
}

void RoomViewModel::togglePerson(int row)
{
    if (row < 0 || row >= rowCount())
        return;
    const child::Person &person = m_others[static_cast<std::size_t>(row)];
    std::vector<PersonId> here = peopleHere();
    const auto found = std::find(here.begin(), here.end(), person.id);
    if (found == here.end())
        here.push_back(person.id);
    else
        here.erase(found);
    m_room.present = here;
    keep();
    emit dataChanged(index(0), index(rowCount() - 1));
}

void RoomViewModel::confirm()
{
    if (m_room.present)
        return;
    m_room.present = peopleHere();
    keep();
}

void RoomViewModel::nobodyElse()
{
    m_room.present.emplace();
    for (const child::Person &person : m_others) {
        if (person.kind == child::PersonKind::Adult &&
            person.alias == toCore(m_household->person()))
            m_room.present->push_back(person.id);
    }
    m_room.visitorUnderThree = false;
    m_room.visitorMouther = false;
    keep();
    if (rowCount() > 0)
        emit dataChanged(index(0), index(rowCount() - 1));
}

void RoomViewModel::toggleVisitorUnderThree()
{
    m_room.visitorUnderThree = !m_room.visitorUnderThree;
    keep();
}

void RoomViewModel::toggleVisitorMouther()
{
    m_room.visitorMouther = !m_room.visitorMouther;
    keep();
}

void RoomViewModel::toggleBesideSaid()
{
    m_room.besideSaid = !m_room.besideSaid;
    keep();
}

void RoomViewModel::toggleQuietNow()
{
    m_room.quietNow = !m_room.quietNow;
    keep();
}

void RoomViewModel::setAdultCanBe(int level)
{
    if (level < 0 || level > static_cast<int>(catalogue::Supervision::Beside))
        return;
    m_room.adultCanBe = static_cast<catalogue::Supervision>(level);
    keep();
}

void RoomViewModel::keep()
{
    m_sitting->setRoom(m_room);
    emit changed();
}

} // namespace lidlark::mobile
