#pragma once

#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/goal_errands.h"
#include "mobile/bridge/kept_rows.h"

#include <vector>

namespace lidlark::mobile {

/// The goals of the child on the table, in words: where each stands, what comes next, who said so.
class GoalsViewModel : public lidlark::mobile::KeptRows
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    Q_PROPERTY(int count READ count NOTIFY loaded FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    enum Role {
        GoalIdRole = Qt::UserRole,
        WordsRole,
        NowRole,
        NextRole,  ///< Empty: it is at its highest level.
        DatesRole, ///< When its words were agreed, and when it is looked at again.
        SaidRole,  ///< A line for each rater's last word.
        BeforeRole ///< That there were other words before; else empty.
    };

    using KeptRows::KeptRows;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] int count() const { return rowCount(); }
    [[nodiscard]] QString problem() const { return m_problem; }

signals:
    void loaded();

protected:
    [[nodiscard]] QStringList rowKeys() const override;

private:
    void load();
    [[nodiscard]] QString datesOf(const child::Goal &goal) const;
    [[nodiscard]] static QStringList saidOf(const goals::GoalVersion &version);

    Household *m_household = nullptr;
    std::vector<goals::GoalRecord> m_goals;
    QString m_problem;
};

} // namespace lidlark::mobile
