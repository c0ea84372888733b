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
    /// Under 36 months the adult shows with the body and taps what was shown (checkin.md 10).
    Q_PROPERTY(bool adultShows READ adultShows CONSTANT FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] bool adultShows() const;

    /// "resting", "steady", "whirling", "clouds", "bag".
    Q_INVOKABLE QString name(const QString &kite) const;
    Q_INVOKABLE QString note(const QString &kite) const;
    Q_INVOKABLE QString thanks() const;
    /// Keeps the tap.
    Q_INVOKABLE void show(const QString &kite, bool fromAdult);

private:
    Household *m_household = nullptr;
    Sitting *m_sitting = nullptr;
    QString m_afterActivity;
};

} // namespace lidlark::mobile
