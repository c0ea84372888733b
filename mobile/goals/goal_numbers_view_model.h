#pragma once

#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/goal_errands.h"
#include "mobile/bridge/kept_rows.h"

#include <vector>

namespace lidlark::mobile {

/// The therapist's numbers: how much each goal counts, and a score for each rater by itself. On
/// anybody else's phone there is nothing in it.
class GoalNumbersViewModel : public lidlark::mobile::KeptRows
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    /// By rater: who, the score, and on how many goals it rests.
    Q_PROPERTY(QList<QString> raters READ raters NOTIFY loaded FINAL)
    Q_PROPERTY(QList<QString> scores READ scores NOTIFY loaded FINAL)
    Q_PROPERTY(QList<QString> restsOn READ restsOn NOTIFY loaded FINAL)
    /// How many goals have ended, and count in no score; empty: none.
    Q_PROPERTY(QString leftOut READ leftOut NOTIFY loaded FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    enum Role {
        GoalIdRole = Qt::UserRole,
        WordsRole,
        WeightRole,
        LevelsRole ///< Each rater's last level as a number, a line each.
    };

    using KeptRows::KeptRows;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] QStringList raters() const;
    [[nodiscard]] QStringList scores() const;
    [[nodiscard]] QStringList restsOn() const;
    [[nodiscard]] QString leftOut() const;
    [[nodiscard]] QString problem() const { return m_problem; }

    Q_INVOKABLE void weigh(int row, int weight);

signals:
    void loaded();

protected:
    [[nodiscard]] QStringList rowKeys() const override;

private:
    void load();
    [[nodiscard]] static QString nameOf(goals::RatedBy role, const std::string &rater);
    [[nodiscard]] QStringList levelsOf(const goals::GoalVersion &version) const;

    Household *m_household = nullptr;
    std::vector<goals::GoalRecord> m_goals;
    std::vector<goals::RaterScore> m_scores;
    int m_ended = 0;
    QString m_problem;
};

} // namespace lidlark::mobile
