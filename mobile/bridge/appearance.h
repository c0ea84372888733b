#pragma once

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"

class QJsonObject;

namespace lidlark::mobile {

/// How this phone shows things, kept on the phone and not with any of its families: text size,
/// light or dark, motion, hand, and how a child taps and hears the kite.
class Appearance : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Made by main")
    Q_PROPERTY(double textScale READ textScale WRITE setTextScale NOTIFY changed FINAL)
    /// 0 light, 1 dark, 2 high contrast.
    Q_PROPERTY(int scheme READ scheme WRITE setScheme NOTIFY changed FINAL)
    Q_PROPERTY(bool reducedMotion READ reducedMotion WRITE setReducedMotion NOTIFY changed FINAL)
    /// Dark and still, whatever else is chosen; high contrast stays as it is.
    Q_PROPERTY(bool saveBattery READ saveBattery WRITE setSaveBattery NOTIFY changed FINAL)
    /// What is shown: the two above as they are chosen, unless the battery is to be saved. Of a
    /// battery that is nearly empty only the motion is taken: eyes keep the colours they need.
    Q_PROPERTY(int shownScheme READ shownScheme NOTIFY changed FINAL)
    Q_PROPERTY(bool still READ still NOTIFY changed FINAL)
    Q_PROPERTY(bool leftHanded READ leftHanded WRITE setLeftHanded NOTIFY changed FINAL)
    /// The kite's words are said aloud, where there is a voice.
    Q_PROPERTY(bool kiteAloud READ kiteAloud WRITE setKiteAloud NOTIFY changed FINAL)
    /// Pieces that come home are counted aloud, where there is a voice (job.md C5).
    Q_PROPERTY(bool countAloud READ countAloud WRITE setCountAloud NOTIFY changed FINAL)
    /// A touch must last as long to count: 0 to 300 ms, in steps of 100 (checkin.md 10).
    Q_PROPERTY(int minimumTouchMs READ minimumTouchMs WRITE setMinimumTouchMs NOTIFY changed FINAL)
    /// 0: the app is touched. 1: what can be pressed is lit in turn, and any key or touch presses
    /// it. 2: one key goes on, another presses.
    Q_PROPERTY(int switches READ switches WRITE setSwitches NOTIFY changed FINAL)
    /// With one switch each is lit for as many seconds, 1 to 5 (checkin.md 10).
    Q_PROPERTY(int scanSeconds READ scanSeconds WRITE setScanSeconds NOTIFY changed FINAL)
    /// With two switches the Qt key that goes on; 0: Tab or Right.
    Q_PROPERTY(int onwardKey READ onwardKey WRITE setOnwardKey NOTIFY changed FINAL)
    /// What is written on it; empty: 0.
    Q_PROPERTY(QString onwardKeyName READ onwardKeyName NOTIFY changed FINAL)
    /// A screen reader is at work. Never kept.
    Q_PROPERTY(bool listened READ listened WRITE setListened NOTIFY changed FINAL)

public:
    explicit Appearance(Household *household, QObject *parent = nullptr);

    [[nodiscard]] double textScale() const { return m_textScale; }
    void setTextScale(double scale);
    [[nodiscard]] int scheme() const { return m_scheme; }
    void setScheme(int scheme);
    [[nodiscard]] bool reducedMotion() const { return m_reducedMotion; }
    void setReducedMotion(bool reduced);
    [[nodiscard]] bool saveBattery() const { return m_saveBattery; }
    void setSaveBattery(bool save);
    [[nodiscard]] int shownScheme() const;
    [[nodiscard]] bool still() const { return m_reducedMotion || m_saveBattery || m_batteryLow; }
    /// Little is left of the phone's battery. Never kept.
    void setBatteryLow(bool low);
    [[nodiscard]] bool leftHanded() const { return m_leftHanded; }
    void setLeftHanded(bool left);
    [[nodiscard]] bool kiteAloud() const { return m_kiteAloud; }
    void setKiteAloud(bool aloud);
    [[nodiscard]] bool countAloud() const { return m_countAloud; }
    void setCountAloud(bool aloud);
    [[nodiscard]] int minimumTouchMs() const { return m_minimumTouchMs; }
    void setMinimumTouchMs(int ms);
    [[nodiscard]] int switches() const { return m_switches; }
    void setSwitches(int switches);
    [[nodiscard]] int scanSeconds() const { return m_scanSeconds; }
    void setScanSeconds(int seconds);
    [[nodiscard]] int onwardKey() const { return m_onwardKey; }
    void setOnwardKey(int qtKey);
    [[nodiscard]] QString onwardKeyName() const;
    [[nodiscard]] bool listened() const { return m_listened; }
    void setListened(bool listened);

    /// For this run only, as the command line asks; nothing is kept.
    void tryOn(double textScale, int scheme, bool reducedMotion);

signals:
    void changed();

private:
    void readSwitches(const QJsonObject &object);
    void keep();

    Household *m_household;
    double m_textScale = 1.0;
    int m_scheme = 0;
    bool m_reducedMotion = false;
    bool m_saveBattery = false;
    bool m_batteryLow = false;
    bool m_leftHanded = false;
    bool m_kiteAloud = false;
    bool m_countAloud = false;
    int m_minimumTouchMs = 0;
    int m_switches = 0;
    int m_scanSeconds = 2;
    int m_onwardKey = 0;
    bool m_listened = false;
};

} // namespace lidlark::mobile
