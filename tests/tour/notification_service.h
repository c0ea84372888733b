#pragma once

#include <QDBusConnection>
#include <QObject>
#include <QStringList>
#include <QVariantMap>

#include <vector>

namespace lidlark::test {

/// Plays the desktop's notification service, and keeps what it was asked to show.
/// Source: Desktop Notifications Specification 1.2, section "D-BUS Protocol".
class NotificationService : public QObject
{
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.Notifications")

public:
    struct Shown {
        QString app;
        uint replaces = 0;
        QString summary;
        QString body;
        QStringList actions;
        QVariantMap hints;
    };
    std::vector<Shown> shown;

    explicit NotificationService(const QString &address)
        : m_bus(QDBusConnection::connectToBus(address, QStringLiteral("service")))
    {
        m_bus.registerObject(QStringLiteral("/org/freedesktop/Notifications"), this,
                             QDBusConnection::ExportAllSlots);
        m_bus.registerService(name());
    }
    ~NotificationService() override
    {
        m_bus.unregisterService(name());
        QDBusConnection::disconnectFromBus(QStringLiteral("service"));
    }
    Q_DISABLE_COPY_MOVE(NotificationService)

public slots:
    uint Notify(const QString &app, uint replaces, const QString & /*icon*/, const QString &summary,
                const QString &body, const QStringList &actions, const QVariantMap &hints,
                int /*expires*/)
    {
        shown.push_back({app, replaces, summary, body, actions, hints});
        return static_cast<uint>(shown.size());
    }
    QString GetServerInformation(QString &vendor, QString &version, QString &spec)
    {
        vendor = version = QStringLiteral("test");
        spec = QStringLiteral("1.2");
        return QStringLiteral("test");
    }

private:
    static QString name() { return QStringLiteral("org.freedesktop.Notifications"); }

    QDBusConnection m_bus;
};

} // namespace lidlark::test
