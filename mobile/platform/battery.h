#pragma once

#include <QDir>
#include <QObject>
#include <QTimer>

#include <optional>

namespace lidlark::mobile {

/// What is left of the batteries a device runs on, in percent: of several the fullest.
/// @param supplies a folder for each supply, as in /sys/class/power_supply.
/// @returns nothing where none is being emptied: on the mains, or charging, or without a battery.
/// Source: Linux kernel, Documentation/ABI/testing/sysfs-class-power: "type", "status", "capacity",
/// and "scope", which is "Device" for that of a mouse or a pen.
[[nodiscard]] std::optional<int> batteryLeft(const QDir &supplies);

/// Looks once a minute whether little is left.
class BatteryWatch : public QObject
{
    Q_OBJECT

public:
    /// Common practice, no source: phones warn at about as much.
    static constexpr int littlePercent = 15;

    explicit BatteryWatch(const QDir &supplies, QObject *parent = nullptr);

    [[nodiscard]] bool low() const { return m_low; }
    void look();

signals:
    void lowChanged(bool low);

private:
    QDir m_supplies;
    QTimer m_timer;
    bool m_low = false;
};

} // namespace lidlark::mobile
