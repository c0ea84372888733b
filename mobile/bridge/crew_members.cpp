#include "mobile/bridge/crew_members.h"

#include "core/wording/day_words.h"
#include "core/wording/role_words.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

int CrewMembers::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_members.size());
}

QVariant CrewMembers::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const crew::Member &member = m_members[static_cast<std::size_t>(index.row())];
    switch (role) {
    case DeviceRole:
        return fromCore(member.device.value);
    case PersonRole:
        return fromCore(member.person);
    case PartRole:
        return m_table != Table::None ? tr("Packs at the table")
               : member.paper         ? tr("A recovery sheet on paper")
                                      : translated(wording::roleWord(member.role));
    case SeesRole:
        return translated(wording::whatRoleSees(member.role));
    case ThisPhoneRole:
        return member.device == m_own;
    case UntilRole:
        return member.role == crew::Role::Guest && member.until
                   ? translated(wording::dateWords(*member.until))
                   : QString();
    case RemovableRole:
        return removable(member);
    default:
        return {};
    }
}

QHash<int, QByteArray> CrewMembers::roleNames() const
{
    return {{DeviceRole, "deviceId"},    {PersonRole, "person"},       {PartRole, "part"},
            {SeesRole, "sees"},          {ThisPhoneRole, "thisPhone"}, {UntilRole, "until"},
            {RemovableRole, "removable"}};
}

void CrewMembers::show(const crew::Crew &crew, const DeviceId &own, Table table)
{
    renewRows([&] {
        m_members = crew.present();
        m_own = own;
        m_table = table;
        std::ranges::stable_partition(
            m_members, [&own](const crew::Member &member) { return member.device == own; });
    });
}

const crew::Member *CrewMembers::member(const DeviceId &device) const
{
    const auto found = std::ranges::find(m_members, device, &crew::Member::device);
    return found == m_members.end() ? nullptr : &*found;
}

bool CrewMembers::removable(const crew::Member &member) const
{
    const crew::Member *me = this->member(m_own);
    return me != nullptr && m_table != Table::PacksOnly && member.device != m_own &&
           crew::mayRemove(*me, member);
}

QStringList CrewMembers::rowKeys() const
{
    QStringList keys;
    for (const crew::Member &member : m_members)
        keys.append(fromCore(member.device.value));
    return keys;
}

} // namespace lidlark::mobile
