#include "mobile/platform/battery.h"

#include <QFile>

#include <algorithm>

namespace lidlark::mobile {

namespace {

constexpr int betweenLooksMs = 60'000;

/// One attribute of a supply: a line, or nothing where the driver does not offer it.
QString attribute(const QDir &supply, const char *name)
{
    QFile file(supply.filePath(QString::fromLatin1(name)));
    if (!file.open(QIODevice::ReadOnly))
        return {};
    return QString::fromLatin1(file.readLine(64)).trimmed();
}

std::optional<int> leftOf(const QDir &supply)
{
    if (attribute(supply, "type") != QLatin1String("Battery") ||
        attribute(supply, "scope") == QLatin1String("Device") ||
        attribute(supply, "status") != QLatin1String("Discharging"))
        return std::nullopt;
    bool isNumber = false;
    const int percent = attribute(supply, "capacity").toInt(&isNumber);
    return isNumber && percent >= 0 && percent <= 100 ? std::optional(percent) : std::nullopt;
}

} // namespace

std::optional<int> batteryLeft(const QDir &supplies)
{
    std::optional<int> fullest;
    const QStringList names = supplies.entryList(QDir::Dirs | QDir::NoDotAndDotDot);
    for (const QString &name : names)
        fullest = std::max(fullest, leftOf(QDir(supplies.filePath(name))));
    return fullest;
}

BatteryWatch::BatteryWatch(const QDir &supplies, QObject *parent)
    : QObject(parent), m_supplies(supplies)
{
    connect(&m_timer, &QTimer::timeout, this, &BatteryWatch::look);
    m_timer.start(betweenLooksMs);
}

void BatteryWatch::look()
{
    const std::optional<int> left = batteryLeft(m_supplies);
    const bool low = left && *left < littlePercent;
    if (low == m_low)
        return;
    m_low = low;
    emit lowChanged(low);
}

} // namespace lidlark::mobile
