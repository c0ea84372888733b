#pragma once

#include <QObject>
#include <QStringList>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/crew_life.h"

#include <optional>

namespace lidlark::mobile {

/// Letting somebody in: whom, a code to be shown, somebody who knocks, and an adult's word on it.
class LettingIn : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::CrewLife *crew MEMBER m_crew NOTIFY crewChanged REQUIRED)
    /// 0 whom, 1 the code is shown, 2 somebody knocks, 3 is in, 4 the code is over.
    Q_PROPERTY(Stage stage READ stage NOTIFY stageChanged FINAL)
    /// Who may be asked in from this phone: "parent", "caregiver", "guest", "therapist",
    /// "other-parent" of a home of their own; to the table, a "packer" alone.
    Q_PROPERTY(QList<QString> parts READ parts NOTIFY crewChanged FINAL)
    Q_PROPERTY(QString part MEMBER m_part NOTIFY changed FINAL)
    /// A guest's days, this one counted, 1 to 7.
    Q_PROPERTY(int days MEMBER m_days NOTIFY changed FINAL)
    /// "Friday 15 January": a guest's last day.
    Q_PROPERTY(QString lastDay READ lastDay NOTIFY changed FINAL)
    /// The nine words.
    Q_PROPERTY(QList<QString> words READ words NOTIFY changed FINAL)
    /// The same for another phone's camera.
    Q_PROPERTY(QString squares READ squares NOTIFY changed FINAL)
    /// "18:35": when the code ends.
    Q_PROPERTY(QString ends READ ends NOTIFY changed FINAL)
    Q_PROPERTY(QString newcomer READ newcomer NOTIFY changed FINAL)
    /// The three words that both phones show.
    Q_PROPERTY(QString sameWords READ sameWords NOTIFY changed FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    Q_PROPERTY(bool busy READ busy NOTIFY changed FINAL)

public:
    enum Stage { Whom, Shown, Knocked, In, Over };
    Q_ENUM(Stage)

    explicit LettingIn(QObject *parent = nullptr);

    [[nodiscard]] Stage stage() const { return m_stage; }
    [[nodiscard]] QStringList parts() const;
    [[nodiscard]] QString lastDay() const;
    [[nodiscard]] QStringList words() const;
    [[nodiscard]] QString squares() const;
    [[nodiscard]] QString ends() const;
    [[nodiscard]] QString newcomer() const;
    [[nodiscard]] QString sameWords() const;
    [[nodiscard]] QString problem() const { return m_problem; }
    [[nodiscard]] bool busy() const { return m_busy; }

    /// "Parent" and what such a one can see.
    Q_INVOKABLE QString nameOf(const QString &part) const;
    Q_INVOKABLE QString seenBy(const QString &part) const;

    /// A code for whom was chosen; the one before ends.
    Q_INVOKABLE void makeCode();
    Q_INVOKABLE void letIn();
    /// The three words differ, or it is nobody known: the code ends, and nobody gets in by it.
    Q_INVOKABLE void refuse();
    /// Back to the choice of whom.
    Q_INVOKABLE void startAgain();

signals:
    void changed();
    void crewChanged();
    void stageChanged();

private:
    [[nodiscard]] bool isAtTable() const;
    void listen();
    void take(const Result<sync::Invited> &invited);
    void take(const Result<Heard> &heard);
    void endCode(Stage stage);
    void go(Stage stage);
    [[nodiscard]] sync::Asked asked() const;

    static constexpr int listenEveryMs = 2000;

    CrewLife *m_crew = nullptr;
    Stage m_stage = Whom;
    QString m_part;
    int m_days = 7;
    std::optional<sync::Invited> m_invited;
    std::optional<sync::Knock> m_knock;
    QTimer m_timer;
    QString m_problem;
    bool m_busy = false;
};

} // namespace lidlark::mobile
