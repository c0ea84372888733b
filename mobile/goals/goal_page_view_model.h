#pragma once

#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/goal_errands.h"
#include "mobile/bridge/kept_rows.h"

#include <optional>
#include <vector>

namespace lidlark::mobile {

/// All of one goal in words. A row for each wording it has had: the one in force, then the earlier
/// ones, the newest first.
class GoalPageViewModel : public lidlark::mobile::KeptRows
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    Q_PROPERTY(QString goal READ goal WRITE setGoal REQUIRED)
    Q_PROPERTY(bool known READ known NOTIFY loaded FINAL) ///< It could be read.
    Q_PROPERTY(QString words READ words NOTIFY loaded FINAL)
    Q_PROPERTY(QString areas READ areas NOTIFY loaded FINAL) ///< Parts of life; may be empty.
    Q_PROPERTY(QString review READ review NOTIFY loaded FINAL)
    Q_PROPERTY(bool ended READ ended NOTIFY loaded FINAL)
    /// How it ended, and that it was taken up again: a line each, newest first.
    Q_PROPERTY(QList<QString> turns READ turns NOTIFY loaded FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    enum Role {
        HeadingRole = Qt::UserRole, ///< Of this wording and those after it; empty: as before.
        TitleRole,                  ///< Since when, and who wrote it down.
        WordsRole,                  ///< The goal's words; empty where they are the present ones.
        ReasonRole,                 ///< Why these words; empty: nobody said.
        LabelsRole,                 ///< What each level means, the highest first.
        LevelsRole,                 ///< Its words.
        StoodRole,                  ///< At which of them the goal stood last, 0 is the highest.
        SaidRole                    ///< What was said of these words, newest first.
    };

    using KeptRows::KeptRows;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);
    [[nodiscard]] QString goal() const { return m_goal; }
    void setGoal(const QString &goal);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] bool known() const { return m_record.has_value(); }
    [[nodiscard]] QString words() const;
    [[nodiscard]] QString areas() const;
    [[nodiscard]] QString review() const;
    [[nodiscard]] bool ended() const { return m_record && m_record->ending; }
    [[nodiscard]] QStringList turns() const;
    [[nodiscard]] QString problem() const { return m_problem; }

    Q_INVOKABLE void takeUp();

signals:
    void loaded();

protected:
    [[nodiscard]] QStringList rowKeys() const override;

private:
    void load();
    [[nodiscard]] QString headingOf(int row) const;
    [[nodiscard]] QString titleOf(const goals::GoalVersion &version) const;
    [[nodiscard]] QStringList labelsOf(int row) const;

    Household *m_household = nullptr;
    QString m_goal;
    std::optional<goals::GoalRecord> m_record;
    std::vector<goals::GoalVersion> m_wordings; ///< As the rows stand.
    QString m_problem;
};

} // namespace lidlark::mobile
