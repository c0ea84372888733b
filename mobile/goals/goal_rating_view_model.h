#pragma once

#include <QAbstractListModel>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/goal_errands.h"

#include <optional>

namespace lidlark::mobile {

/// Which of its five levels a goal has reached, as one rater sees it on one day. What another rater
/// says stands beside it.
class GoalRatingViewModel : public QAbstractListModel
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    Q_PROPERTY(QString goal READ goal WRITE setGoal REQUIRED)
    Q_PROPERTY(QString words READ words NOTIFY loaded FINAL)
    /// Who may rate, in words; `role` is one of them, -1: not chosen.
    Q_PROPERTY(QList<QString> roles READ roles CONSTANT FINAL)
    Q_PROPERTY(int role READ role WRITE setRole NOTIFY loaded FINAL)
    /// Whether a name is asked for.
    Q_PROPERTY(bool named READ named NOTIFY loaded FINAL)
    Q_PROPERTY(QString rater READ rater WRITE setRater NOTIFY loaded FINAL)
    Q_PROPERTY(QString day READ day NOTIFY loaded FINAL) ///< "today", "4 January".
    Q_PROPERTY(bool dayMayRise READ dayMayRise NOTIFY loaded FINAL)
    Q_PROPERTY(bool dayMayFall READ dayMayFall NOTIFY loaded FINAL)
    /// All that was said of these words, newest first, a line each.
    Q_PROPERTY(QList<QString> said READ said NOTIFY loaded FINAL)
    Q_PROPERTY(bool complete READ complete NOTIFY loaded FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    enum Role { LabelRole = Qt::UserRole, WordsRole, ChosenRole };

    using QAbstractListModel::QAbstractListModel;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);
    [[nodiscard]] QString goal() const { return m_goal; }
    void setGoal(const QString &goal);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] QString words() const;
    [[nodiscard]] static QStringList roles();
    [[nodiscard]] int role() const { return m_role ? static_cast<int>(*m_role) : -1; }
    void setRole(int role);
    [[nodiscard]] bool named() const { return m_role && *m_role != goals::RatedBy::Together; }
    [[nodiscard]] QString rater() const { return m_rater; }
    void setRater(const QString &rater);
    [[nodiscard]] QString day() const;
    [[nodiscard]] bool dayMayRise() const;
    [[nodiscard]] bool dayMayFall() const;
    [[nodiscard]] QStringList said() const;
    [[nodiscard]] bool complete() const;
    [[nodiscard]] QString problem() const { return m_problem; }

    Q_INVOKABLE void choose(int row);
    Q_INVOKABLE void moveDay(int days);
    /// @returns whether it is kept; else `problem` says why.
    Q_INVOKABLE bool keep();

signals:
    void loaded();

private:
    void load();
    void change();

    Household *m_household = nullptr;
    QString m_goal;
    std::optional<goals::GoalRecord> m_record;
    std::optional<int> m_level;
    std::optional<goals::RatedBy> m_role;
    QString m_rater;
    Day m_day;
    QString m_problem;
};

} // namespace lidlark::mobile
