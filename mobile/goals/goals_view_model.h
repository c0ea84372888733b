#pragma once

#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/goal_errands.h"
#include "mobile/bridge/kept_rows.h"

#include <vector>

namespace lidlark::mobile {

/// The goals of the child on the table, in words: where each stands, what comes next, who said so.
/// In the order of the parts of life they are about; those that have ended stand by themselves.
class GoalsViewModel : public lidlark::mobile::KeptRows
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    Q_PROPERTY(int count READ count NOTIFY loaded FINAL)
    /// Goals that have ended, the last one first: their ids, their words, and how each ended.
    Q_PROPERTY(QList<QString> earlier READ earlier NOTIFY loaded FINAL)
    Q_PROPERTY(QList<QString> earlierWords READ earlierWords NOTIFY loaded FINAL)
    Q_PROPERTY(QList<QString> earlierEnds READ earlierEnds NOTIFY loaded FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    enum Role {
        GoalIdRole = Qt::UserRole,
        HeadingRole, ///< The part of life of this goal and those after it; empty: as before.
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
    [[nodiscard]] QStringList earlier() const;
    [[nodiscard]] QStringList earlierWords() const;
    [[nodiscard]] QStringList earlierEnds() const;
    [[nodiscard]] QString problem() const { return m_problem; }

signals:
    void loaded();

protected:
    [[nodiscard]] QStringList rowKeys() const override;

private:
    void load();
    /// Parts ended goals from the others, and lays both in their order.
    void sort(std::vector<goals::GoalRecord> records);
    [[nodiscard]] QString headingOf(std::size_t row) const;
    [[nodiscard]] QString datesOf(const child::Goal &goal) const;
    [[nodiscard]] static QStringList saidOf(const goals::GoalVersion &version);

    Household *m_household = nullptr;
    std::vector<goals::GoalRecord> m_goals;
    std::vector<goals::GoalRecord> m_earlier;
    QString m_problem;
};

} // namespace lidlark::mobile
