#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"
#include "mobile/bridge/sitting.h"

namespace lidlark::mobile {

/// The child's words for each kite, and what a tap does (checkin.md 2, 3, 6).
class KiteViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household MEMBER m_household REQUIRED)
    Q_PROPERTY(lidlark::mobile::Sitting *sitting MEMBER m_sitting REQUIRED)
    /// Empty: the kite before play. Else the activity after which the child shows it again.
    Q_PROPERTY(QString afterActivity MEMBER m_afterActivity FINAL)
    /// The adult's own guess, or a child under 36 months, who shows with the body while the adult
    /// taps (checkin.md 10).
    Q_PROPERTY(bool byAdult READ byAdult WRITE setByAdult NOTIFY byAdultChanged FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] bool byAdult() const;
    void setByAdult(bool byAdult);

    /// "resting", "steady", "whirling", "clouds", "bag".
    Q_INVOKABLE QString name(const QString &kite) const;
    Q_INVOKABLE QString note(const QString &kite) const;
    Q_INVOKABLE QString thanks() const;
    /// "Your kite was tugging. Now it is steady.": what both kites say, and no more.
    Q_INVOKABLE QString beforeAndNow(const QString &before, const QString &now) const;
    /// Keeps the tap.
    Q_INVOKABLE void show(const QString &kite);

signals:
    void byAdultChanged();

private:
    Household *m_household = nullptr;
    Sitting *m_sitting = nullptr;
    QString m_afterActivity;
    bool m_byAdult = false;
};

} // namespace lidlark::mobile
