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

    /// A crew that packs together, and has no child's box; on a phone that does nothing but pack,
    /// nobody else is taken out: that is for whoever asked it in.
    enum class Table { None, Own, PacksOnly };

    using KeptRows::KeptRows;
    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    /// @param own whose phone this is.
    void show(const crew::Crew &crew, const DeviceId &own, Table table);
    /// @returns null where nobody of that device is in.
    [[nodiscard]] const crew::Member *member(const DeviceId &device) const;

protected:
    [[nodiscard]] QStringList rowKeys() const override;

private:
    [[nodiscard]] bool removable(const crew::Member &member) const;

    std::vector<crew::Member> m_members;
    DeviceId m_own;
    Table m_table = Table::None;
};

} // namespace lidlark::mobile
