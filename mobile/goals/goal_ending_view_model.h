#pragma once

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/goal_errands.h"

#include <optional>

namespace lidlark::mobile {

/// How a goal comes to an end, chosen and said in words. Nothing is kept until `end`.
class GoalEndingViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    Q_PROPERTY(QString goal READ goal WRITE setGoal REQUIRED)
    Q_PROPERTY(QString words READ words NOTIFY changed FINAL)
    /// How it may end, in words; `way` is one of them, -1: not chosen.
    Q_PROPERTY(QList<QString> ways READ ways CONSTANT FINAL)
    Q_PROPERTY(int way READ way WRITE setWay NOTIFY changed FINAL)
    Q_PROPERTY(QString reason READ reason WRITE setReason NOTIFY changed FINAL)
    Q_PROPERTY(bool complete READ complete NOTIFY changed FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)

public:
    using QObject::QObject;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);
    [[nodiscard]] QString goal() const { return m_goal; }
    void setGoal(const QString &goal);

    [[nodiscard]] QString words() const { return m_words; }
    [[nodiscard]] static QStringList ways();
    [[nodiscard]] int way() const { return m_way ? static_cast<int>(*m_way) : -1; }
    void setWay(int way);
    [[nodiscard]] QString reason() const { return m_reason; }
    void setReason(const QString &reason);
    [[nodiscard]] bool complete() const { return m_way.has_value(); }
    [[nodiscard]] QString problem() const { return m_problem; }

    /// @returns whether it is kept; else `problem` says why, and nothing typed is lost.
    Q_INVOKABLE bool end();

signals:
    void changed();

private:
    void load();

    Household *m_household = nullptr;
    QString m_goal;
    QString m_words;
    std::optional<goals::Turn> m_way;
    QString m_reason;
    QString m_problem;
};

} // namespace lidlark::mobile
