#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"

namespace lidlark::mobile {

/// "Something is wrong" (safety.md EM-01 to EM-05): the number first, then what to do until help is
/// there. Opens on the airway, so that nothing is asked before it is said.
class EmergencyViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    Q_PROPERTY(QString lead READ lead NOTIFY changed FINAL)
    Q_PROPERTY(QString words READ words NOTIFY changed FINAL)
    /// What else it may be, in the order of `choose`.
    Q_PROPERTY(QList<QString> others READ others NOTIFY changed FINAL)
    /// The family's own number; empty: none was entered.
    Q_PROPERTY(QString number READ number NOTIFY changed FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);
    [[nodiscard]] QString lead() const;
    [[nodiscard]] QString words() const;
    [[nodiscard]] QStringList others() const;
    [[nodiscard]] QString number() const { return m_number; }

    /// @param index of `others`.
    Q_INVOKABLE void choose(int index);
    /// Hands the number to the phone's own dialler, which asks before it calls.
    Q_INVOKABLE void call() const;

signals:
    void changed();

private:
    Household *m_household = nullptr;
    QString m_number;
    QString m_poisonLine;
    int m_chosen = 0;
};

} // namespace lidlark::mobile
