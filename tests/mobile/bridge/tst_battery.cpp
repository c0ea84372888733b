#include <QSignalSpy>
#include <QtTest>

#include "mobile/platform/battery.h"

using namespace lidlark::mobile;

/// Guards that a nearly empty battery is noticed, and nothing else is taken for one. The attributes
/// are those of Linux, Documentation/ABI/testing/sysfs-class-power.
class TestBattery : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<QTemporaryDir> m_supplies;

    void write(const QString &supply, const QByteArray &name, const QByteArray &value) const
    {
        const QDir folder(m_supplies->path());
        QVERIFY(folder.mkpath(supply));
        QFile file(folder.filePath(supply + u'/' + QString::fromLatin1(name)));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write(value + "\n");
    }
    void battery(const QString &supply, const QByteArray &status, const QByteArray &capacity,
                 const QByteArray &scope = {}) const
    {
        write(supply, "type", "Battery");
        write(supply, "status", status);
        write(supply, "capacity", capacity);
        if (!scope.isEmpty())
            write(supply, "scope", scope);
    }
    [[nodiscard]] int left() const { return batteryLeft(QDir(m_supplies->path())).value_or(-1); }

private slots:
    void init() { m_supplies = std::make_unique<QTemporaryDir>(); }

    void whatIsLeftIsRead_data()
    {
        QTest::addColumn<QByteArray>("status");
        QTest::addColumn<QByteArray>("capacity");
        QTest::addColumn<int>("left");
        QTest::newRow("in use") << QByteArray("Discharging") << QByteArray("9") << 9;
        QTest::newRow("charging") << QByteArray("Charging") << QByteArray("9") << -1;
        QTest::newRow("full, on the mains") << QByteArray("Full") << QByteArray("100") << -1;
        QTest::newRow("no number") << QByteArray("Discharging") << QByteArray("low") << -1;
        QTest::newRow("absurd") << QByteArray("Discharging") << QByteArray("-7") << -1;
        QTest::newRow("empty") << QByteArray("Discharging") << QByteArray("") << -1;
    }
    void whatIsLeftIsRead()
    {
        QFETCH(QByteArray, status);
        QFETCH(QByteArray, capacity);
        battery(QStringLiteral("BAT0"), status, capacity);
        QTEST(left(), "left");
    }

    void onlyWhatRunsThePhoneCounts()
    {
        QCOMPARE(left(), -1);
        write(QStringLiteral("AC"), "type", "Mains");
        battery(QStringLiteral("pen"), "Discharging", "3", "Device");
        QCOMPARE(left(), -1);
        battery(QStringLiteral("BAT0"), "Discharging", "8");
        QCOMPARE(left(), 8);
        battery(QStringLiteral("BAT1"), "Discharging", "61");
        QCOMPARE(left(), 61);
    }

    void aLowBatteryIsSaidOnceEachWay()
    {
        battery(QStringLiteral("BAT0"), "Discharging", "15");
        BatteryWatch watch{QDir(m_supplies->path())};
        const QSignalSpy said(&watch, &BatteryWatch::lowChanged);
        watch.look();
        QVERIFY(!watch.low());
        QCOMPARE(said.size(), 0);
        battery(QStringLiteral("BAT0"), "Discharging", "14");
        watch.look();
        watch.look();
        QVERIFY(watch.low());
        QCOMPARE(said.size(), 1);
        battery(QStringLiteral("BAT0"), "Charging", "14");
        watch.look();
        QVERIFY(!watch.low());
        QCOMPARE(said.size(), 2);
    }

    void aPhoneThatSaysNothingIsNotLow()
    {
        BatteryWatch watch{QDir(m_supplies->filePath(QStringLiteral("nowhere")))};
        watch.look();
        QVERIFY(!watch.low());
    }
};

QTEST_MAIN(TestBattery)
#include "tst_battery.moc"
