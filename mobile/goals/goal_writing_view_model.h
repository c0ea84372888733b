#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/goal_errands.h"

#include <optional>
#include <vector>

namespace lidlark::mobile {

/// A goal while it is written with the family: five levels, the highest first, each with what is to
/// be said of it. Nothing is kept until it is agreed on.
class GoalWritingViewModel : public QAbstractListModel
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    /// The goal whose words are changed; empty: a new one.
    Q_PROPERTY(QString goal READ goal WRITE setGoal REQUIRED)
    Q_PROPERTY(QString words READ words WRITE setWords NOTIFY edited FINAL)
    Q_PROPERTY(QString wordsProblem READ wordsProblem NOTIFY edited FINAL)
    Q_PROPERTY(QString shortWords READ shortWords WRITE setShortWords NOTIFY edited FINAL)
    Q_PROPERTY(QString shortProblem READ shortProblem NOTIFY edited FINAL)
    /// Parts of the family's life, in words; the offers go by these, too.
    Q_PROPERTY(QList<QString> areas READ areas CONSTANT FINAL)
    Q_PROPERTY(QList<QString> chosenAreas READ chosenAreas NOTIFY edited FINAL)
    /// The words or a level are no longer those in force: a reason may be given.
    Q_PROPERTY(bool rewords READ rewords NOTIFY edited FINAL)
    Q_PROPERTY(QString reason READ reason WRITE setReason NOTIFY edited FINAL)
    Q_PROPERTY(QString reasonProblem READ reasonProblem NOTIFY edited FINAL)
    Q_PROPERTY(QString baselineProblem READ baselineProblem NOTIFY edited FINAL)
    /// "29 March"; empty: not chosen.
    Q_PROPERTY(QString review READ review NOTIFY edited FINAL)
    Q_PROPERTY(QString reviewProblem READ reviewProblem NOTIFY edited FINAL)
    /// Weeks from today of the review, where it is a whole number of them; else 0.
    Q_PROPERTY(int reviewWeeks READ reviewWeeks NOTIFY edited FINAL)
    /// What it practises, in words; the offers for the child go by it.
    Q_PROPERTY(QList<QString> skills READ skills CONSTANT FINAL)
    Q_PROPERTY(QList<QString> chosenSkills READ chosenSkills NOTIFY edited FINAL)
    /// It was looked over, and may be agreed on as it stands.
    Q_PROPERTY(bool ready READ ready NOTIFY edited FINAL)
    /// Something is said of the words, but nothing that keeps them from being agreed on.
    Q_PROPERTY(bool onlyRemarks READ onlyRemarks NOTIFY edited FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY edited FINAL)

public:
    enum Role {
        LevelRole = Qt::UserRole,
        LabelRole,
        WordsRole,
        FindingRole, ///< What is to be said of it; empty: nothing.
        TodayRole    ///< It is how it is today.
    };

    using QAbstractListModel::QAbstractListModel;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);
    [[nodiscard]] QString goal() const { return m_goal; }
    void setGoal(const QString &goal);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] QString words() const;
    void setWords(const QString &words);
    [[nodiscard]] QString shortWords() const;
    void setShortWords(const QString &words);
    [[nodiscard]] QString wordsProblem() const { return findingOf(goals::DraftField::Words); }
    [[nodiscard]] QString shortProblem() const { return findingOf(goals::DraftField::ShortWords); }
    [[nodiscard]] static QStringList areas();
    [[nodiscard]] QStringList chosenAreas() const;
    [[nodiscard]] bool rewords() const;
    [[nodiscard]] QString reason() const { return QString::fromStdString(m_draft.reason); }
    void setReason(const QString &words);
    [[nodiscard]] QString reasonProblem() const { return findingOf(goals::DraftField::Reason); }
    [[nodiscard]] QString baselineProblem() const { return findingOf(goals::DraftField::Baseline); }
    [[nodiscard]] QString reviewProblem() const { return findingOf(goals::DraftField::ReviewOn); }
    [[nodiscard]] QString review() const;
    [[nodiscard]] int reviewWeeks() const;
    [[nodiscard]] static QStringList skills();
    [[nodiscard]] QStringList chosenSkills() const;
    [[nodiscard]] bool ready() const;
    [[nodiscard]] bool onlyRemarks() const { return ready() && !m_findings.empty(); }
    [[nodiscard]] QString problem() const { return m_problem; }

    Q_INVOKABLE void setLevel(int row, const QString &words);
    Q_INVOKABLE void setToday(int row);
    Q_INVOKABLE void reviewInWeeks(int weeks);
    /// A week later, or with -1 a week earlier.
    Q_INVOKABLE void moveReview(int weeks);
    Q_INVOKABLE void chooseSkill(int skill);
    Q_INVOKABLE void chooseArea(int area);
    /// Says at each field what is to be said. @returns whether it may be agreed on.
    Q_INVOKABLE bool lookOver();
    /// Keeps it. @returns whether it is kept; else `problem` says why.
    Q_INVOKABLE bool agree();

signals:
    void edited();

private:
    void load();
    void change();
    [[nodiscard]] QString findingOf(goals::DraftField field, int level = 0) const;

    Household *m_household = nullptr;
    QString m_goal;
    goals::GoalDraft m_draft;
    std::optional<goals::GoalDraft> m_before; ///< In force, where words are changed.
    bool m_lookedOver = false;
    std::vector<goals::DraftFinding> m_findings; ///< Empty until it was looked over.
    QString m_problem;
};

} // namespace lidlark::mobile
