#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"

namespace lidlark::mobile {

/// A family's choice whether the therapist hears what is played (core/usecase/share_plays.h).
class PlaySharing : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    /// The therapist in the crew, or all of them; empty: there is nothing to choose on this phone.
    Q_PROPERTY(QString with READ with NOTIFY changed FINAL)
    Q_PROPERTY(bool shares READ shares NOTIFY changed FINAL)
    Q_PROPERTY(QString said READ said NOTIFY changed FINAL) ///< Whose yes it is; empty: no yes.
    Q_PROPERTY(QString problem READ problem NOTIFY changed FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);
    [[nodiscard]] QString with() const { return m_with; }
    [[nodiscard]] bool shares() const { return m_shares; }
    [[nodiscard]] QString said() const { return m_said; }
    [[nodiscard]] QString problem() const { return m_problem; }

    Q_INVOKABLE void say(bool yes);

signals:
    void changed();

private:
    void load();

    Household *m_household = nullptr;
    QString m_with;
    bool m_shares = false;
    QString m_said;
    QString m_problem;
};

} // namespace lidlark::mobile
