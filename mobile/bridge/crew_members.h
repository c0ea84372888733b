#pragma once

#include "mobile/bridge/kept_rows.h"

#include "core/crew/crew.h"

#include <vector>

namespace lidlark::mobile {

/// Who is in the crew now, a phone a row: this one first.
class CrewMembers : public KeptRows
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Made by the crew")

public:
    enum Role {
        DeviceRole = Qt::UserRole,
        PersonRole,
        PartRole,
        SeesRole,
        ThisPhoneRole,
        UntilRole,
        RemovableRole
    };

    using KeptRows::KeptRows;
    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    /// @param own whose phone this is. @param table they pack together, and no child's box is
    /// theirs.
    void show(const crew::Crew &crew, const DeviceId &own, bool table);
    /// @returns null where nobody of that device is in.
    [[nodiscard]] const crew::Member *member(const DeviceId &device) const;

protected:
    [[nodiscard]] QStringList rowKeys() const override;

private:
    [[nodiscard]] bool removable(const crew::Member &member) const;

    std::vector<crew::Member> m_members;
    DeviceId m_own;
    bool m_table = false;
};

} // namespace lidlark::mobile
