#include <QtTest>

#include <QProcess>
#include <QRandomGenerator>
#include <QTemporaryDir>

#include <csignal>

#include "core/store/projector.h"
#include "core/usecase/play_activity.h"
#include "core/usecase/progress.h"

#include "tests/support/phone.h"

using namespace lidlark;
using namespace lidlark::test;

namespace {

constexpr int kills = 200;

/// What the tapper had said before it was killed, about its last play.
struct Said {
    QString play;
    int home = 0;
    int named = 0;
    bool ended = false;
    bool any = false;
};

Said readSaid(const QByteArray &output)
{
    Said said;
    for (const QByteArray &line : output.split('\n')) {
        const QList<QByteArray> words = line.split(' ');
        if (words.front() == "start")
            said = {QString::fromUtf8(words.value(1)), 0, 0, false, true};
        else if (words.front() == "home")
            said.home = words.value(1).toInt();
        else if (words.front() == "named")
            said.named = words.value(1).toInt();
        else if (words.front() == "ended")
            said.ended = true;
    }
    return said;
}

int stillInUse(const usecase::Family &family, const PlayId &play, const char *item)
{
    for (const store::OutcomeRow &outcome : family.outcomes) {
        if (outcome.play == play && outcome.item.value == item)
            return outcome.exceptions.of(box::ExceptionKind::StillInUse);
    }
    return 0;
}

} // namespace

/// Guards the promise of the issue and of job.md G6: SIGKILL at 200 random moments during put-back
/// loses no acknowledged tap and never leaves a half-written play.
class TestKilledWhilePuttingBack : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_folder;
    QString m_store;

    /// Runs the tapper, kills it after @p afterMs, and returns what it had said.
    QByteArray killAfter(int round, int afterMs)
    {
        QProcess tapper;
        tapper.start(qEnvironmentVariable("LIDLARK_TAPPER"),
                     {m_store, QStringLiteral("round %1").arg(round)});
        if (!tapper.waitForStarted())
            return {};
        QByteArray output;
        while (!output.contains("ready") && tapper.waitForReadyRead(5000))
            output += tapper.readAllStandardOutput();
        QThread::usleep(static_cast<unsigned long>(afterMs));
        ::kill(static_cast<pid_t>(tapper.processId()), SIGKILL);
        tapper.waitForFinished();
        return output + tapper.readAllStandardOutput();
    }

    void checkStore(const Said &said)
    {
        auto database = store::Database::openExisting(m_store.toStdString());
        QVERIFY(database.ok());
        QCOMPARE(*database->integrity(), std::string("ok"));
        const auto matches = store::Projector(*database).matchesRefold();
        QVERIFY(matches.ok() && *matches);
        StillClock clock(islandTime(11, 18, 30));
        SeededEntropy entropy("after");
        const auto device = store::DeviceRepository(*database).device();
        usecase::Workplace workplace{*database, realCatalogue(), clock, entropy, **device};
        const auto family = usecase::loadFamily(workplace, "Fin");
        QVERIFY(family.ok());
        if (said.any)
            checkPlay(workplace, *family, said);
        for (const play::Play &play : family->plays) {
            // Ended means wholly ended: both named items and the ending, or none of them.
            const PlayId id = play.id;
            const bool both =
                stillInUse(*family, id, "eyes") == 2 && stillInUse(*family, id, "dough") == 1;
            QCOMPARE(play.ending.has_value(), both);
            QVERIFY(play.ending.has_value() || stillInUse(*family, id, "dough") == 0);
        }
        // Every play began with a tapped kite, in the same transaction.
        QCOMPARE(family->checkIns.size(), family->plays.size());
    }

    void checkPlay(usecase::Workplace &workplace, const usecase::Family &family, const Said &said)
    {
        const PlayId id{said.play.toStdString()};
        const auto play = std::find_if(family.plays.begin(), family.plays.end(),
                                       [&](const auto &p) { return p.id == id; });
        QVERIFY2(play != family.plays.end(), "an acknowledged play is gone");
        if (said.ended)
            QVERIFY2(play->ending.has_value(), "an acknowledged yes is gone");
        if (said.named > 0)
            QVERIFY2(stillInUse(family, id, "eyes") >= 1, "an acknowledged exception is gone");
        if (play->ending)
            return;
        const auto progress = usecase::loadProgress(workplace, family.box.id, family.child.id);
        QVERIFY(progress.ok());
        if (said.home > 0) {
            QVERIFY(progress->has_value());
            QVERIFY2((*progress)->home.at({"eyes"}) >= said.home, "an acknowledged tap is gone");
        }
    }

private slots:
    void initTestCase()
    {
        QVERIFY2(!qEnvironmentVariable("LIDLARK_TAPPER").isEmpty(), "LIDLARK_TAPPER is not set");
        m_store = m_folder.filePath(QStringLiteral("fin-ruth.lidlark"));
        auto morven = therapistWith({"Fin"});
        auto database = store::Database::open(m_store.toStdString());
        QVERIFY(database.ok());
        const store::Device device{{"d-ruth"}, "Ruth", store::Role::Parent, {"h-fin"}};
        QVERIFY(store::DeviceRepository(*database).setDevice(device).ok());
        StillClock clock(islandTime(10, 18, 0));
        SeededEntropy entropy("before");
        usecase::Workplace workplace{*database, realCatalogue(), clock, entropy, device};
        QVERIFY(usecase::takeEventsFrom(morven->database, workplace, [](const auto &lane) {
                    return lane.scope == "b-fin" || lane.scope == "h-fin";
                }).ok());
    }

    void killedAtTwoHundredRandomMoments()
    {
        QRandomGenerator random(20270111);
        int inTheMiddle = 0;
        for (int round = 0; round < kills; ++round) {
            const Said said = readSaid(killAfter(round, random.bounded(30'000)));
            inTheMiddle += said.any && !said.ended ? 1 : 0;
            checkStore(said);
            if (QTest::currentTestFailed())
                return;
        }
        // The kills must fall into plays, or this test would guard nothing.
        QVERIFY2(inTheMiddle > kills / 4, qPrintable(QString::number(inTheMiddle)));
    }
};

QTEST_GUILESS_MAIN(TestKilledWhilePuttingBack)
#include "tst_killed_while_putting_back.moc"
