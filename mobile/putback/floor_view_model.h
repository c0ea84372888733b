#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"

namespace lidlark::mobile {

/// Pieces that may lie on the floor, and the three ways to close that (job.md scenario 5).
class FloorViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household MEMBER m_household REQUIRED)
    /// "Two eyes are missing."
    Q_PROPERTY(QString lead READ lead NOTIFY changed FINAL)
    /// "Keep Mirren away until found."
    Q_PROPERTY(QString keepAway READ keepAway NOTIFY changed FINAL)
    Q_PROPERTY(int missing READ missing NOTIFY changed FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] QString lead() const { return m_lead; }
    [[nodiscard]] QString keepAway() const { return m_keepAway; }
    [[nodiscard]] int missing() const { return m_missing; }

    Q_INVOKABLE void load();
    /// One piece turned up. @returns whether nothing is missing any more.
    Q_INVOKABLE bool foundOne();
    /// The floor was looked over, and it was not found.
    Q_INVOKABLE bool floorChecked();

signals:
    void changed();

private:
    Household *m_household = nullptr;
    QString m_lead;
    QString m_keepAway;
    int m_missing = 0;
    ItemId m_item;
};

} // namespace lidlark::mobile
