#pragma once

#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"
#include "mobile/bridge/kept_rows.h"
#include "mobile/bridge/workbench_desk.h"

#include <vector>

namespace lidlark::mobile {

/// The boxes of a restock round: what goes to each by post or on a visit, and whether it has left.
class ParcelViewModel : public lidlark::mobile::KeptRows
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    Q_PROPERTY(int count READ count NOTIFY loaded FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    enum Role { ChildRole = Qt::UserRole, NoteRole, ByPostRole, PackedRole };

    using KeptRows::KeptRows;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);
    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] int count() const { return rowCount(); }
    [[nodiscard]] QString problem() const { return m_problem; }

    Q_INVOKABLE void goByPost(int row, bool post);
    /// All that is packed for it has left.
    Q_INVOKABLE void send(int row);

signals:
    void loaded();

protected:
    [[nodiscard]] QStringList rowKeys() const override;

private:
    void load();
    void report(const Outcome &outcome);

    Household *m_household = nullptr;
    std::vector<usecase::RoundBox> m_rows;
    QString m_problem;
};

} // namespace lidlark::mobile
