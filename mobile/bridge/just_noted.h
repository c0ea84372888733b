#pragma once

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"

namespace lidlark::mobile {

/// What this phone has just noted about the box, the home sheet or the end of a play, with its way
/// back: it stands until something else is done. Nothing was asked before it was noted.
class JustNoted : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    /// "2 pegs lost"; a line for each thing. Empty: nothing was just noted.
    Q_PROPERTY(QString text READ text NOTIFY changed FINAL)
    Q_PROPERTY(bool takenBack READ takenBack NOTIFY changed FINAL)
    /// Rises with everything that is newly noted: so a touch that noted it does not put it away.
    Q_PROPERTY(int serial READ serial NOTIFY changed FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);
    [[nodiscard]] QString text() const { return m_text; }
    [[nodiscard]] bool takenBack() const { return m_takenBack; }
    [[nodiscard]] int serial() const { return m_serial; }

    /// @returns false with `failed` when it could not be kept.
    Q_INVOKABLE bool takeBack();
    Q_INVOKABLE bool putInAgain();
    Q_INVOKABLE void putAway();

signals:
    void changed();
    void failed(const QString &problem);

private:
    void look();
    void lookFrom();
    bool report(const Outcome &outcome);
    [[nodiscard]] bool isToldOf(const usecase::Noted &noted) const;

    Household *m_household = nullptr;
    Instant m_upTo; ///< Of the latest thing that was told of, or lay there before.
    std::string m_event;
    QString m_text;
    bool m_takenBack = false;
    int m_serial = 0;
};

} // namespace lidlark::mobile
