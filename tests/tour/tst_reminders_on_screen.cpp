#include <QtTest>

#include <QTemporaryDir>
#include <QtQml/qqmlextensionplugin.h>

#include "core/usecase/remind.h"
#include "mobile/bridge/reminders.h"
#include "mobile/platform/desktop_notifier.h"
#include "tests/tour/notification_service.h"
#include "tests/tour/open_app.h"
#include "tests/tour/private_bus.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

using namespace lidlark;
using namespace lidlark::test;

/// Guards job.md F10 and D9: one quiet reminder a day that names nobody, over a real D-Bus.
class TestRemindersOnScreen : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<QTemporaryDir> m_folder;
    std::unique_ptr<PrivateBus> m_bus;
    QString m_store;

    static constexpr const char *bathTime = "2027-01-11T18:30:00Z";

    /// As an adult has chosen it in Settings.
    void turnItOn()
    {
        auto phone = store::Database::open(m_store.toStdString());
        reminder::Reminder reminder;
        reminder.on = true;
        QVERIFY(usecase::keepReminder(*phone, reminder, {}).ok());
    }
    struct Ended {
        int status = -1;
        QString errors;
    };
    /// `lidlark --remind` at @p clock, on the private bus; the service answers meanwhile.
    [[nodiscard]] Ended remind(const char *clock) const
    {
        QProcess program;
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        environment.insert(text("DBUS_SESSION_BUS_ADDRESS"), m_bus->address());
        environment.insert(text("QT_QPA_PLATFORM"), text("none there is")); // it needs no screen
        program.setProcessEnvironment(environment);
        program.start(text(LIDLARK_PROGRAM),
                      {text("--remind"), text("--store"), m_store, text("--clock"), text(clock)});
        QEventLoop ended;
        QObject::connect(&program, &QProcess::finished, &ended, &QEventLoop::quit);
        if (program.state() != QProcess::NotRunning)
            ended.exec();
        return {program.exitCode(), QString::fromUtf8(program.readAllStandardError())};
    }
    [[nodiscard]] QDBusConnection bus() const
    {
        return QDBusConnection::connectToBus(m_bus->address(), text("app"));
    }
    /// The app with the desktop's notifier on the private bus.
    struct App {
        App(const QString &store, const char *clock, const QDBusConnection &bus)
            : graph({store, {}, msFromText(clock), std::nullopt, std::nullopt, true, {}}, nullptr,
                    std::make_unique<mobile::DesktopNotifier>(bus))
        {
            if (!graph.show())
                qFatal("no window");
            window = qobject_cast<QQuickWindow *>(graph.engine().rootObjects().constFirst());
            Hand::settle(600);
        }
        mobile::Graph graph;
        QQuickWindow *window = nullptr;
        [[nodiscard]] Hand hand() const { return Hand(window); }
    };

private slots:
    void initTestCase()
    {
        wakeAccessibleTree();
        Hand::beQuick();
    }
    void init()
    {
        m_folder = std::make_unique<QTemporaryDir>();
        m_bus = std::make_unique<PrivateBus>();
        QVERIFY2(!m_bus->address().isEmpty(), "no dbus-daemon: install the package dbus");
        m_store = m_folder->filePath(text("home.lidlark"));
        writeStore(m_store, "Fin", "Ruth", "h-fin");
    }
    void cleanup() { QDBusConnection::disconnectFromBus(text("app")); }

    /// Low urgency, a category, no sound; the app's name and one line, and nobody's.
    void theProgramSaysOneQuietLineOnce()
    {
        NotificationService service(m_bus->address());
        turnItOn();
        Ended ended = remind(bathTime);
        QVERIFY2(ended.status == 0 && ended.errors.isEmpty(), qPrintable(ended.errors));
        QCOMPARE(service.shown.size(), std::size_t{1});
        const NotificationService::Shown &line = service.shown.front();
        QCOMPARE(line.app, text("Lidlark"));
        QCOMPARE(line.summary, text("After bath: five minutes to play?"));
        QCOMPARE(line.body, text("Lidlark"));
        QVERIFY(line.actions.isEmpty());
        QCOMPARE(line.hints[text("urgency")], QVariant::fromValue(uchar{0}));
        QCOMPARE(line.hints[text("urgency")].metaType(), QMetaType::fromType<uchar>());
        QCOMPARE(line.hints[text("category")], QVariant(text("x-lidlark.reminder")));
        QCOMPARE(line.hints[text("suppress-sound")], QVariant(true));
        ended = remind("2027-01-11T18:45:00Z");
        QCOMPARE(ended.status, 0);
        QCOMPARE(service.shown.size(), std::size_t{1});
    }

    void offAtTheStartItSaysNothing()
    {
        NotificationService service(m_bus->address());
        QCOMPARE(remind(bathTime).status, 0);
        QVERIFY(service.shown.empty());
    }

    void aPhoneWithoutAStoreSaysNothingAndMakesNone()
    {
        NotificationService service(m_bus->address());
        QVERIFY(QFile::remove(m_store));
        QCOMPARE(remind(bathTime).status, 0);
        QVERIFY(service.shown.empty());
        QVERIFY(!QFile::exists(m_store));
    }

    /// Somebody has played today, in whatever family: nothing is said.
    void noneOnADayWithPlayInAnotherFamily()
    {
        NotificationService service(m_bus->address());
        turnItOn();
        QVERIFY(QDir().mkpath(m_store + text(".families")));
        const QString other = m_store + text(".families/family-2.lidlark");
        writeStore(other, "Rory", "Struan", "h-rory");
        {
            OpenApp rory(other, "2027-01-11T16:00:00Z");
            QVERIFY(rory.hand().tap(text("Everything")));
            QVERIFY(rory.hand().tap(text("Slow Oars")));
        }
        QCOMPARE(remind(bathTime).status, 0);
        QVERIFY(service.shown.empty());
        QCOMPARE(remind("2027-01-12T18:30:00Z").status, 0);
        QCOMPARE(service.shown.size(), std::size_t{1});
    }

    /// No service: said plainly on standard error, and the day's turn is not used up.
    void withoutAServiceTheDayIsNotUsedUp()
    {
        turnItOn();
        const Ended ended = remind(bathTime);
        QCOMPARE(ended.status, 1);
        QVERIFY2(ended.errors.contains(text("No notification service answers")),
                 qPrintable(ended.errors));
        NotificationService service(m_bus->address());
        QCOMPARE(remind("2027-01-11T18:45:00Z").status, 0);
        QCOMPARE(service.shown.size(), std::size_t{1});
    }

    void theRunningAppSaysItByItself()
    {
        NotificationService service(m_bus->address());
        turnItOn();
        const App app(m_store, bathTime, bus());
        QTRY_COMPARE(service.shown.size(), std::size_t{1});
        QCOMPARE(remind("2027-01-11T18:31:00Z").status, 0);
        QCOMPARE(service.shown.size(), std::size_t{1}); // app and timer together say it once
    }

    /// Turned on, given a moment and a time, on the real screen; kept with the phone.
    void inSettings()
    {
        NotificationService service(m_bus->address());
        {
            const App app(m_store, "2027-01-11T12:00:00Z", bus());
            const Hand hand = app.hand();
            QVERIFY(hand.tap(text("Crew")));
            QVERIFY(hand.tap(text("Settings")));
            QVERIFY(!hand.reads(text("All that the locked screen says")));
            QVERIFY2(hand.tap(text("One quiet reminder a day")),
                     qPrintable(hand.names().join(u'|')));
            QVERIFY(hand.reads(text("After bath: five minutes to play?")));
            QVERIFY(hand.tap(text("After tea")));
            QVERIFY(hand.reads(text("After tea: five minutes to play?")));
            QVERIFY(hand.tap(text("A quarter of an hour later")));
            QVERIFY(!hand.reads(text("nothing to show a reminder with")));
        }
        auto phone = store::Database::open(m_store.toStdString());
        const auto kept = usecase::reminderOf(*phone);
        QVERIFY(kept->on);
        QCOMPARE(kept->hook, reminder::Hook::AfterTea);
        QCOMPARE(kept->minuteOfDay, 17 * 60 + 45);
    }

    /// An own line may not name a child: visitors see a locked screen.
    void anOwnLineNamesNobody()
    {
        NotificationService service(m_bus->address());
        const App app(m_store, "2027-01-11T12:00:00Z", bus());
        const Hand hand = app.hand();
        QVERIFY(hand.tap(text("Crew")));
        QVERIFY(hand.tap(text("Settings")));
        QVERIFY(hand.tap(text("One quiet reminder a day")));
        QVERIFY(hand.tap(text("Our own words")));
        QVERIFY(hand.reads(text("Five minutes to play?")));
        QVERIFY(hand.write(text("When?"), text("Fin is back")));
        QVERIFY(hand.tap(text("Keep these words")));
        QVERIFY2(hand.reads(text("it names nobody")), qPrintable(hand.words().join(u'|')));
        QVERIFY(!hand.reads(text("Fin is back: five")));
    }

    void withoutAServiceSettingsSaysSo()
    {
        const App app(m_store, "2027-01-11T12:00:00Z", bus());
        const Hand hand = app.hand();
        QVERIFY(hand.tap(text("Crew")));
        QVERIFY(hand.tap(text("Settings")));
        QVERIFY(hand.tap(text("One quiet reminder a day")));
        QTRY_VERIFY(hand.reads(text("This phone has nothing to show a reminder with.")));
    }

    void withoutABusSettingsSaysSo()
    {
        const App app(m_store, "2027-01-11T12:00:00Z", QDBusConnection(text("nowhere")));
        const Hand hand = app.hand();
        QVERIFY(hand.tap(text("Crew")));
        QVERIFY(hand.tap(text("Settings")));
        QVERIFY(hand.tap(text("One quiet reminder a day")));
        QTRY_VERIFY(hand.reads(text("This phone has nothing to show a reminder with.")));
    }
};

QTEST_MAIN(TestRemindersOnScreen)
#include "tst_reminders_on_screen.moc"
