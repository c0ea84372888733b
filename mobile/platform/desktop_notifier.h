#pragma once

#include <QDBusConnection>

#include "mobile/platform/notifier.h"

class QDBusPendingCall;

namespace lidlark::mobile {

/// The desktop's notification service, over the session's D-Bus.
/// Source: Desktop Notifications Specification 1.2 (freedesktop.org): method Notify, hints
/// "urgency" (0 is low), "category" (of a vendor: "x-vendor.name") and "suppress-sound".
class DesktopNotifier final : public Notifier
{
    Q_OBJECT

public:
    explicit DesktopNotifier(QDBusConnection bus = QDBusConnection::sessionBus(),
                             QObject *parent = nullptr)
        : Notifier(parent), m_bus(std::move(bus))
    {
    }

    void say(const QString &line) override;
    void ask() override;

private:
    /// Emits @p answer with whether @p call came back well.
    void whenAnswered(const QDBusPendingCall &call, void (Notifier::*answer)(bool));

    QDBusConnection m_bus;
};

} // namespace lidlark::mobile
