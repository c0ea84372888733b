#pragma once

#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"
#include "mobile/bridge/kept_rows.h"

#include <vector>

namespace lidlark::mobile {

/// The home sheet as questions with their careful answers. Each answer is a new statement in this
/// phone's person's name (events.md 8).
class HomeSheetViewModel : public lidlark::mobile::KeptRows
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    Q_PROPERTY(QList<QString> people READ people NOTIFY loaded FINAL)
    Q_PROPERTY(QString homeName READ homeName NOTIFY loaded FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)
    /// The home must avoid something that is, or was, in the box.
    Q_PROPERTY(bool avoids READ avoids NOTIFY loaded FINAL)
    /// As the family has entered them; empty: not said.
    Q_PROPERTY(QString emergencyNumber READ emergencyNumber NOTIFY loaded FINAL)
    Q_PROPERTY(QString poisonLine READ poisonLine NOTIFY loaded FINAL)

public:
    /// Rows: yes / no questions. `answer`: 0 not said, 1 yes, 2 no.
    enum Role { QuestionRole = Qt::UserRole, NoteRole, AnswerRole };

    using KeptRows::KeptRows;
    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

    [[nodiscard]] QStringList people() const;
    [[nodiscard]] QString homeName() const;
    [[nodiscard]] QString problem() const { return m_problem; }

    [[nodiscard]] bool avoids() const { return m_avoids; }
    [[nodiscard]] QString emergencyNumber() const;
    [[nodiscard]] QString poisonLine() const;

    Q_INVOKABLE void say(int row, int answer);
    /// Keeps the number. @returns why not, or nothing.
    Q_INVOKABLE QString keepEmergencyNumber(const QString &number);
    Q_INVOKABLE QString keepPoisonLine(const QString &number);

signals:
    void loaded();
    /// The answer just given means that things must leave the house.
    void mustLeave();

protected:
    [[nodiscard]] QStringList rowKeys() const override;

private:
    struct Row {
        std::string person;
        std::string fact;
        QString question;
        QString note;
        child::Answer answer = child::Answer::Unanswered;
    };
    void load();
    void readRows();
    QString keepNumber(std::string_view fact, const QString &number);

    Household *m_household = nullptr;
    std::optional<usecase::Family> m_family;
    std::vector<Row> m_rows;
    QString m_problem;
    bool m_avoids = false;
};

} // namespace lidlark::mobile
