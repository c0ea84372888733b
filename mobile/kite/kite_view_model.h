#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"
#include "mobile/bridge/sitting.h"
#include "mobile/bridge/voice.h"

namespace lidlark::mobile {

/// The child's words for each kite, written and said, and what a tap does (checkin.md 2, 3, 6).
class KiteViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household MEMBER m_household REQUIRED)
    Q_PROPERTY(lidlark::mobile::Sitting *sitting MEMBER m_sitting REQUIRED)
    Q_PROPERTY(lidlark::mobile::Voice *voice MEMBER m_voice REQUIRED)
    /// Say without being asked to: the question, and the same thanks for all.
    Q_PROPERTY(bool aloud MEMBER m_aloud FINAL)
    /// Empty: the kite before play. Else the activity after which the child shows it again.
    Q_PROPERTY(
        QString afterActivity MEMBER m_afterActivity NOTIFY afterActivityChanged FINAL REQUIRED)
    Q_PROPERTY(QString question READ question NOTIFY afterActivityChanged FINAL)
    /// The adult's own guess, or a child under 36 months, who shows with the body while the adult
    /// taps (checkin.md 10). Nothing is said then: it is not the child who reads.
    Q_PROPERTY(bool byAdult READ byAdult WRITE setByAdult NOTIFY byAdultChanged FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] bool byAdult() const;
    void setByAdult(bool byAdult);
    [[nodiscard]] QString question() const;

    /// "resting", "steady", "whirling", "clouds", "bag".
    Q_INVOKABLE QString name(const QString &kite) const;
    Q_INVOKABLE QString note(const QString &kite) const;
    Q_INVOKABLE QString thanks() const;
    Q_INVOKABLE QString everyKite() const;
    /// "Your kite was tugging." and "Now it is steady.": what both kites say, and no more.
    Q_INVOKABLE QStringList beforeAndNow(const QString &before, const QString &now) const;
    /// Keeps the tap, and thanks.
    Q_INVOKABLE void show(const QString &kite);

    /// Says the question when the screen opens, where words are said without being asked for.
    Q_INVOKABLE void ask() const;
    /// Says the question and the three kites.
    Q_INVOKABLE void readAll() const;
    /// Says what a switch has lit, where words are said without being asked for.
    Q_INVOKABLE void cue(const QString &picture) const;
    /// Says the line of one picture; "hand" is one too.
    Q_INVOKABLE void readOne(const QString &picture) const;

signals:
    void byAdultChanged();
    void afterActivityChanged();

private:
    [[nodiscard]] QString line(const QString &picture) const;
    void thankAloud(const QString &kite) const;

    Household *m_household = nullptr;
    Sitting *m_sitting = nullptr;
    Voice *m_voice = nullptr;
    QString m_afterActivity;
    bool m_aloud = false;
    bool m_byAdult = false;
};

} // namespace lidlark::mobile
