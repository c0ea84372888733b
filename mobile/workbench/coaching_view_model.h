#pragma once

#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"
#include "mobile/bridge/kept_rows.h"

#include <vector>

namespace lidlark::mobile {

/// Six lines of the handing over, each with its tick (job.md T17).
class CoachingViewModel : public lidlark::mobile::KeptRows
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    enum Role { WordsRole = Qt::UserRole, DoneRole };

    using KeptRows::KeptRows;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);
    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] QString problem() const { return m_problem; }

    Q_INVOKABLE void tick(int row, bool done);

signals:
    void loaded();

protected:
    [[nodiscard]] QStringList rowKeys() const override;

private:
    void load();

    Household *m_household = nullptr;
    std::vector<bool> m_ticks;
    QString m_problem;
};

} // namespace lidlark::mobile
