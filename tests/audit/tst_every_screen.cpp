#include <QtTest>

#include <QtQml/qqmlextensionplugin.h>

#include "tests/audit/stop_audit.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

using namespace lidlark;

namespace {

/// One process a language, so that two cores are used.
QString language()
{
    return qEnvironmentVariable("LIDLARK_AUDIT_LANGUAGE", QStringLiteral("en"));
}

QtMessageHandler usualHandler = nullptr;
QStringList complaints;

/// A page that QML complains about is not laid out as it was meant.
void hear(QtMsgType type, const QMessageLogContext &context, const QString &line)
{
    if (!line.startsWith(QStringLiteral("qrc:/qt/qml/")))
        usualHandler(type, context, line);
    else if (!complaints.contains(line))
        complaints.append(line);
}

} // namespace

/// Guards that every screen in every state can be read, hit and told apart in every way it may be
/// shown (job.md A1 to A4, A10; checkin.md 10).
class TestEveryScreen : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<test::Wander> m_wander;
    QSet<QString> m_states;

private slots:
    void initTestCase()
    {
        test::wakeAccessibleTree();
        test::Hand::beQuick();
        usualHandler = qInstallMessageHandler(hear);
        m_wander = std::make_unique<test::Wander>(language());
    }

    void everyStateInEveryWay_data()
    {
        QTest::addColumn<int>("number");
        const std::vector<test::Leg> legs = test::everyLeg();
        for (std::size_t i = 0; i < legs.size(); ++i)
            QTest::newRow(legs[i].name) << static_cast<int>(i);
    }
    void everyStateInEveryWay()
    {
        QFETCH(int, number);
        QStringList findings;
        const auto audit = [&](const test::Stop &stop) {
            if (m_states.contains(stop.name))
                findings.append(QStringLiteral("two states are called %1").arg(stop.name));
            m_states.insert(stop.name);
            const QString only = qEnvironmentVariable("LIDLARK_AUDIT_STATE");
            if (!only.isEmpty() && only != stop.name)
                return;
            audit::StopAudit looked(stop, language());
            looked.run();
            findings += looked.findings();
        };
        const QString failed =
            m_wander->walk(test::everyLeg()[static_cast<std::size_t>(number)], audit);
        findings += std::exchange(complaints, {});
        for (const QString &finding : std::as_const(findings))
            qWarning("Found: %s", qPrintable(finding)); // a message of Qt Test would be cut
        QVERIFY2(findings.isEmpty(),
                 qPrintable(QStringLiteral("%1 findings, see above").arg(findings.size())));
        QVERIFY2(failed.isEmpty(), qPrintable(failed));
    }
};

QTEST_MAIN(TestEveryScreen)
#include "tst_every_screen.moc"
