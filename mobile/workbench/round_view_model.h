#pragma once

#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"
#include "mobile/bridge/kept_rows.h"
#include "mobile/bridge/workbench_desk.h"

#include <vector>

namespace lidlark::mobile {

/// The restock round (job.md T13): each item with every box that waits for it. A tick says to that
/// family that it is packed.
class RoundViewModel : public lidlark::mobile::KeptRows
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    Q_PROPERTY(int count READ count NOTIFY loaded FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    enum Role {
        ItemIdRole = Qt::UserRole,
        HeadingRole, ///< Over the first box of an item: its name; else empty.
        TotalRole,   ///< "5 to pack": beside the heading.
        DrawingRole,
        ChildRole,
        NoteRole, ///< "2 pieces, asked for by Ruth, Monday".
        PackedRole
    };

    using KeptRows::KeptRows;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);
    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] int count() const { return rowCount(); }
    [[nodiscard]] QString problem() const { return m_problem; }

    Q_INVOKABLE void pack(int row);

signals:
    void loaded();

protected:
    [[nodiscard]] QStringList rowKeys() const override;

private:
    struct Row {
        ItemId item;
        usecase::RoundLine line;
        int toPack = 0; ///< Pieces of the item, over all boxes.
    };
    void load();
    [[nodiscard]] QString noteOf(const Row &row) const;

    Household *m_household = nullptr;
    std::vector<Row> m_rows;
    QString m_problem;
};

} // namespace lidlark::mobile
