#include <QTemporaryDir>
#include <QtTest>

#include "simulation/crew_life.h"

using namespace lidlark;
using namespace lidlark::test;

/// A month of a crew over a storage that breaks, with clocks that are wrong and batteries that die
/// (events.md 12): who holds the same shows the same all along, nothing is lost, nothing is
/// doubled, nobody holds what is not theirs. A few histories; 1,000 with LIDLARK_LONG=1, and one
/// alone with LIDLARK_SEED.
class TestCrewSimulation : public QObject
{
    Q_OBJECT

private slots:
    void aMonthOfACrew_data()
    {
        QTest::addColumn<unsigned>("seed");
        const bool chosen = qEnvironmentVariableIsSet("LIDLARK_SEED");
        const int first = chosen ? qEnvironmentVariableIntValue("LIDLARK_SEED") : 1;
        const int last = qEnvironmentVariableIntValue("LIDLARK_LONG") > 0 ? 1000 : 2;
        for (int seed = first; seed <= (chosen ? first : last); ++seed)
            QTest::addRow("seed %d", seed) << static_cast<unsigned>(seed);
    }

    void aMonthOfACrew()
    {
        QFETCH(unsigned, seed);
        const QTemporaryDir folder;
        CrewLife life(seed, folder.path().toStdString());
        const std::string fault = life.live();
        QVERIFY2(fault.empty(), ("seed " + std::to_string(seed) + ": " + fault).c_str());
        QVERIFY(life.acts() > 100);
        QVERIFY(life.judge().comparisons() > 50);
        QVERIFY(life.deaths() > 5);
        QVERIFY(life.bundles() > 5);
        qInfo("%d acts, %zu events, %d exchanges, %d batteries dead, %d bundles, %d comparisons",
              life.acts(), life.judge().written(), life.exchanges(), life.deaths(), life.bundles(),
              life.judge().comparisons());
    }
};

QTEST_APPLESS_MAIN(TestCrewSimulation)
#include "tst_crew_simulation.moc"
