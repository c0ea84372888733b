#include "mobile/platform/desktop_notifier.h"

#include <QDBusMessage>
#include <QDBusPendingCall>
#include <QDBusPendingCallWatcher>
#include <QVariantMap>

namespace lidlark::mobile {

namespace {

constexpr int patienceMs = 5000;
constexpr int theServersOwnTime = -1; // how long it stays is for the desktop to say

QDBusMessage callTo(const char *method)
{
    return QDBusMessage::createMethodCall(QStringLiteral("org.freedesktop.Notifications"),
                                          QStringLiteral("/org/freedesktop/Notifications"),
                                          QStringLiteral("org.freedesktop.Notifications"),
                                          QString::fromLatin1(method));
}

/// Of low urgency: shown, and no more.
QVariantMap quietHints()
{
    return {{QStringLiteral("urgency"), QVariant::fromValue(uchar{0})},
            {QStringLiteral("category"), QStringLiteral("x-lidlark.reminder")},
            {QStringLiteral("suppress-sound"), true},
            {QStringLiteral("desktop-entry"), QStringLiteral("lidlark")}};
}

} // namespace

void DesktopNotifier::say(const QString &line)
{
    const QString app = QStringLiteral("Lidlark");
    QDBusMessage notify = callTo("Notify");
    // What a family has typed stands in the summary: in a body a "<" could be read as markup.
    notify << app << uint{0} << QString() << line << app << QStringList() << quietHints()
           << theServersOwnTime;
    whenAnswered(m_bus.asyncCall(notify, patienceMs), &Notifier::said);
}

void DesktopNotifier::ask()
{
    whenAnswered(m_bus.asyncCall(callTo("GetServerInformation"), patienceMs), &Notifier::answered);
}

void DesktopNotifier::whenAnswered(const QDBusPendingCall &call, void (Notifier::*answer)(bool))
{
    if (!m_bus.isConnected()) { // there is no call to wait for
        QMetaObject::invokeMethod(
            this, [this, answer] { emit(this->*answer)(false); }, Qt::QueuedConnection);
        return;
    }
    auto *watcher = new QDBusPendingCallWatcher(call, this);
    connect(watcher, &QDBusPendingCallWatcher::finished, this, [this, watcher, answer] {
        watcher->deleteLater();
        emit(this->*answer)(!watcher->isError());
    });
}

} // namespace lidlark::mobile
