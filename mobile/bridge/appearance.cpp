#include "mobile/bridge/appearance.h"

#include <QJsonDocument>
#include <QJsonObject>
#include <QKeySequence>

namespace lidlark::mobile {

namespace {

constexpr auto key = "appearance";
constexpr int light = 0;
constexpr int dark = 1;
constexpr int longestMinimumTouchMs = 300; // checkin.md 10
constexpr int touchStepMs = 100;
constexpr int fastestScanSeconds = 1; // checkin.md 10
constexpr int slowestScanSeconds = 5;
constexpr int usualScanSeconds = 2;
constexpr int mostSwitches = 2;

int wholeSteps(int ms)
{
    return qBound(0, ms, longestMinimumTouchMs) / touchStepMs * touchStepMs;
}

} // namespace

Appearance::Appearance(Household *household, QObject *parent)
    : QObject(parent), m_household(household)
{
    if (household->phone() == nullptr)
        return;
    const auto kept = store::DeviceRepository(*household->phone()).localState(key);
    if (!kept || !*kept)
        return;
    const QJsonObject object = QJsonDocument::fromJson(QByteArray::fromStdString(**kept)).object();
    m_textScale = qBound(1.0, object[QStringLiteral("text-scale")].toDouble(1.0), 2.0);
    m_scheme = qBound(0, object[QStringLiteral("scheme")].toInt(), 2);
    m_reducedMotion = object[QStringLiteral("reduced-motion")].toBool();
    m_saveBattery = object[QStringLiteral("save-battery")].toBool();
    m_leftHanded = object[QStringLiteral("left-handed")].toBool();
    m_kiteAloud = object[QStringLiteral("kite-aloud")].toBool();
    m_countAloud = object[QStringLiteral("count-aloud")].toBool();
    m_minimumTouchMs = wholeSteps(object[QStringLiteral("minimum-touch-ms")].toInt());
    readSwitches(object);
}

void Appearance::readSwitches(const QJsonObject &object)
{
    const int seconds = object[QStringLiteral("scan-seconds")].toInt(usualScanSeconds);
    // Before there were two, a time for one switch was all that was kept, and 0 was none.
    const bool oneOfOld = !object.contains(QStringLiteral("switches")) &&
                          object.contains(QStringLiteral("scan-seconds")) && seconds > 0;
    m_switches =
        qBound(0, object[QStringLiteral("switches")].toInt(oneOfOld ? 1 : 0), mostSwitches);
    m_scanSeconds =
        seconds > 0 ? qBound(fastestScanSeconds, seconds, slowestScanSeconds) : usualScanSeconds;
    m_onwardKey = qMax(0, object[QStringLiteral("onward-key")].toInt());
}

void Appearance::setTextScale(double scale)
{
    m_textScale = qBound(1.0, scale, 2.0);
    keep();
}

void Appearance::setScheme(int scheme)
{
    m_scheme = qBound(0, scheme, 2);
    keep();
}

void Appearance::setReducedMotion(bool reduced)
{
    m_reducedMotion = reduced;
    keep();
}

void Appearance::setSaveBattery(bool save)
{
    m_saveBattery = save;
    keep();
}

void Appearance::setBatteryLow(bool low)
{
    m_batteryLow = low;
    emit changed();
}

int Appearance::shownScheme() const
{
    return m_saveBattery && m_scheme == light ? dark : m_scheme;
}

void Appearance::setLeftHanded(bool left)
{
    m_leftHanded = left;
    keep();
}

void Appearance::setKiteAloud(bool aloud)
{
    m_kiteAloud = aloud;
    keep();
}

void Appearance::setCountAloud(bool aloud)
{
    m_countAloud = aloud;
    keep();
}

void Appearance::setMinimumTouchMs(int ms)
{
    m_minimumTouchMs = wholeSteps(ms);
    keep();
}

void Appearance::setScanSeconds(int seconds)
{
    m_scanSeconds = qBound(fastestScanSeconds, seconds, slowestScanSeconds);
    keep();
}

void Appearance::setSwitches(int switches)
{
    m_switches = qBound(0, switches, mostSwitches);
    keep();
}

void Appearance::setOnwardKey(int qtKey)
{
    m_onwardKey = qMax(0, qtKey);
    keep();
}

QString Appearance::onwardKeyName() const
{
    return m_onwardKey == 0 ? QString()
                            : QKeySequence(m_onwardKey).toString(QKeySequence::NativeText);
}

void Appearance::setListened(bool listened)
{
    m_listened = listened;
    emit changed();
}

void Appearance::tryOn(double textScale, int scheme, bool reducedMotion)
{
    m_textScale = qBound(1.0, textScale, 2.0);
    m_scheme = qBound(0, scheme, 2);
    m_reducedMotion = reducedMotion;
    emit changed();
}

void Appearance::keep()
{
    emit changed();
    if (m_household->phone() == nullptr)
        return;
    const QJsonObject object{{QStringLiteral("text-scale"), m_textScale},
                             {QStringLiteral("scheme"), m_scheme},
                             {QStringLiteral("reduced-motion"), m_reducedMotion},
                             {QStringLiteral("save-battery"), m_saveBattery},
                             {QStringLiteral("left-handed"), m_leftHanded},
                             {QStringLiteral("kite-aloud"), m_kiteAloud},
                             {QStringLiteral("count-aloud"), m_countAloud},
                             {QStringLiteral("minimum-touch-ms"), m_minimumTouchMs},
                             {QStringLiteral("switches"), m_switches},
                             {QStringLiteral("scan-seconds"), m_scanSeconds},
                             {QStringLiteral("onward-key"), m_onwardKey}};
    // A setting that could not be kept holds until the app is closed: nothing to report.
    (void)store::DeviceRepository(*m_household->phone())
        .setLocalState(key, QJsonDocument(object).toJson(QJsonDocument::Compact).toStdString());
}

} // namespace lidlark::mobile
