#pragma once

#include <QObject>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/crew_life.h"

#include "core/sync/invitation.h"
#include "core/sync/kept_place.h"

#include <optional>

namespace lidlark::mobile {

/// A phone that has been given a code: reads it as it is typed, asks where the crew meets and who
/// is joining, knocks, and waits to be let in.
class JoiningIn : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::CrewLife *crew READ crew WRITE setCrew REQUIRED)
    Q_PROPERTY(Stage stage READ stage NOTIFY stageChanged FINAL)
    /// What was typed of the code.
    Q_PROPERTY(QString typed READ typed WRITE setTyped NOTIFY changed FINAL)
    /// What is wrong with it so far; empty: nothing, or it is still being typed.
    Q_PROPERTY(QString help READ help NOTIFY changed FINAL)
    /// "5 of 9 words".
    Q_PROPERTY(QString soFar READ soFar NOTIFY changed FINAL)
    Q_PROPERTY(bool codeReady READ codeReady NOTIFY changed FINAL)
    Q_PROPERTY(QString place MEMBER m_place NOTIFY changed FINAL)
    Q_PROPERTY(QString user MEMBER m_user NOTIFY changed FINAL)
    Q_PROPERTY(QString password MEMBER m_password NOTIFY changed FINAL)
    Q_PROPERTY(QString person MEMBER m_person NOTIFY changed FINAL)
    /// The three words that both phones show.
    Q_PROPERTY(QString sameWords READ sameWords NOTIFY changed FINAL)
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)
    Q_PROPERTY(bool busy READ busy NOTIFY changed FINAL)

public:
    enum Stage { Code, Where, Who, Waiting, In };
    Q_ENUM(Stage)

    explicit JoiningIn(QObject *parent = nullptr);

    [[nodiscard]] CrewLife *crew() const { return m_crew; }
    /// A joining that was begun before is gone on with.
    void setCrew(CrewLife *crew);
    [[nodiscard]] Stage stage() const { return m_stage; }
    [[nodiscard]] QString typed() const { return m_typed; }
    void setTyped(const QString &typed);
    [[nodiscard]] QString help() const { return m_help; }
    [[nodiscard]] QString soFar() const { return m_soFar; }
    [[nodiscard]] bool codeReady() const { return m_secret.has_value(); }
    [[nodiscard]] QString sameWords() const { return m_same; }
    [[nodiscard]] QString problem() const { return m_problem; }
    [[nodiscard]] bool busy() const { return m_busy; }

    /// A picture with the code in it: a photo, or what another program was shown.
    /// @param file its path, or a file: address.
    /// @returns false with `problem` said.
    Q_INVOKABLE bool readPicture(const QString &file);
    /// What a SquareReader read.
    Q_INVOKABLE void readSquares(const QString &text);
    /// On to the next page; what is missing is said in `problem`.
    Q_INVOKABLE void next();
    Q_INVOKABLE void back();
    /// Gives up waiting; the code was used by nobody.
    Q_INVOKABLE void giveUp();

signals:
    void changed();
    void stageChanged();
    void joined();

private:
    void go(Stage stage);
    bool takeCode(const std::optional<sync::Invitation> &invitation, const QString &whence);
    void begin();
    void goOnWaiting();
    void knock();
    void take(const Result<JoinReport> &report);
    [[nodiscard]] sync::CrewPlace typedPlace() const;
    [[nodiscard]] QString spaced(const std::array<std::string, 3> &words) const;

    static constexpr int knockEveryMs = 2000;

    CrewLife *m_crew = nullptr;
    Stage m_stage = Code;
    QString m_typed;
    QString m_help;
    QString m_soFar;
    std::optional<sync::JoinSecret> m_secret;
    QString m_place;
    QString m_user;
    QString m_password;
    QString m_person;
    QString m_same;
    QString m_problem;
    QTimer m_timer;
    bool m_busy = false;
};

} // namespace lidlark::mobile
