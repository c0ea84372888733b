#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/crew_life.h"

namespace lidlark::mobile {

/// Where the phones of a crew meet, as an adult says it: tried out before it is kept.
class SharedPlace : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::CrewLife *crew READ crew WRITE setCrew REQUIRED)
    Q_PROPERTY(QString address MEMBER m_address NOTIFY changed FINAL)
    Q_PROPERTY(QString user MEMBER m_user NOTIFY changed FINAL)
    Q_PROPERTY(QString password MEMBER m_password NOTIFY changed FINAL)
    /// What the trial came to, in a sentence; empty: not tried.
    Q_PROPERTY(QString found READ found NOTIFY changed FINAL)
    /// It can be used, and is kept.
    Q_PROPERTY(bool works READ works NOTIFY worksChanged FINAL)
    Q_PROPERTY(bool busy READ busy NOTIFY changed FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] CrewLife *crew() const { return m_crew; }
    void setCrew(CrewLife *crew);
    [[nodiscard]] QString found() const { return m_found; }
    [[nodiscard]] bool works() const { return m_works; }
    [[nodiscard]] bool busy() const { return m_busy; }

    /// Tries all that sharing will ask of it, and keeps it where it answers well.
    Q_INVOKABLE void tryOut();
    /// It was chosen no longer. What lies there stays there.
    Q_INVOKABLE void forget();

signals:
    void changed();
    void worksChanged();

private:
    void say(const QString &found, bool works);

    CrewLife *m_crew = nullptr;
    QString m_address;
    QString m_user;
    QString m_password;
    QString m_found;
    bool m_works = false;
    bool m_busy = false;
};

} // namespace lidlark::mobile
