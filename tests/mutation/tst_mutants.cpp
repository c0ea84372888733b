#include "tests/mutation/mutant_list.h"

#include <QtCore/QFile>
#include <QtCore/QProcess>
#include <QtTest/QtTest>

#include <atomic>
#include <mutex>
#include <thread>

#include <sys/resource.h>

using namespace lidlark::mutation;

// Whether the tests of the gate notice when any single thing in it goes wrong. Each mutant first
// runs against the second reading of the rules (lidlark-mutants-worker), then, if it survives,
// against every test of the gate, all compiled with the mutated copies. A mutant is killed when one
// of these programs fails. Mutation analysis: R. A. DeMillo, R. J. Lipton, F. G. Sayward, "Hints on
// test data selection", IEEE Computer 11(4), 1978.

namespace {

constexpr int casesEach = 20'000;
constexpr rlim_t secondsEach = 60; ///< Of processor time; a mutant may never end.

QString pathFrom(const char *variable)
{
    return qEnvironmentVariable(variable);
}

QByteArray contentsOf(const QString &path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        qFatal("cannot read %s", qPrintable(path));
    return file.readAll();
}

void limit()
{
    const rlimit time{secondsEach, secondsEach};
    setrlimit(RLIMIT_CPU, &time);
    const rlimit noDump{0, 0}; // Many mutants crash, and are meant to.
    setrlimit(RLIMIT_CORE, &noDump);
}

/// Whether @p program is content with the mutant.
bool passes(const QString &program, const QStringList &words, int mutant)
{
    QProcess process;
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.insert("LIDLARK_MUTANT", QString::number(mutant));
    process.setProcessEnvironment(environment);
    process.setChildProcessModifier(limit);
    process.setStandardOutputFile(QProcess::nullDevice());
    process.setStandardErrorFile(QProcess::nullDevice());
    process.start(program, words);
    if (!process.waitForStarted(-1))
        qFatal("cannot start %s", qPrintable(program));
    process.waitForFinished(-1);
    return process.exitStatus() == QProcess::NormalExit && process.exitCode() == 0;
}

double childSeconds()
{
    rusage used{};
    getrusage(RUSAGE_CHILDREN, &used);
    const auto seconds = [](const timeval &time) {
        return static_cast<double>(time.tv_sec) + static_cast<double>(time.tv_usec) / 1e6;
    };
    return seconds(used.ru_utime) + seconds(used.ru_stime);
}

} // namespace

class TestMutants : public QObject
{
    Q_OBJECT

private slots:
    void initTestCase();
    void theGateItselfPasses();
    void everyMutantIsKilled();

private:
    [[nodiscard]] bool survives(int mutant) const;
    void judgeFrom(std::atomic<std::size_t> &next);
    [[nodiscard]] bool isExcused(const ListedMutant &mutant);

    QString m_worker;
    QStringList m_tests;
    std::vector<ListedMutant> m_mutants;
    std::vector<Equivalent> m_equivalents;
    std::vector<bool> m_isUsed; ///< Of the equivalents.
    std::mutex m_lock;
    std::vector<ListedMutant> m_survivors;
};

void TestMutants::initTestCase()
{
    m_worker = pathFrom("LIDLARK_MUTANTS_WORKER");
    m_tests = pathFrom("LIDLARK_MUTANTS_TESTS").split(' ', Qt::SkipEmptyParts);
    m_mutants = mutantsFrom(contentsOf(pathFrom("LIDLARK_MUTANTS_LIST")).toStdString());
    m_equivalents =
        equivalentsFrom(contentsOf(pathFrom("LIDLARK_MUTANTS_EQUIVALENT")).toStdString());
    m_isUsed.resize(m_equivalents.size(), false);
    QVERIFY(!m_tests.isEmpty());
    QVERIFY2(m_mutants.size() > 100, "the gate has more than a hundred things to get wrong");
}

bool TestMutants::survives(int mutant) const
{
    if (!passes(m_worker, {QString::number(casesEach)}, mutant))
        return false;
    return std::all_of(m_tests.begin(), m_tests.end(), [mutant](const QString &test) {
        return passes(test, {"-nocrashhandler", "-maxwarnings", "1"}, mutant);
    });
}

/// Else every mutant would count as killed.
void TestMutants::theGateItselfPasses()
{
    QVERIFY(passes(m_worker, {QString::number(casesEach)}, 0));
    for (const QString &test : std::as_const(m_tests))
        QVERIFY2(passes(test, {"-nocrashhandler"}, 0), qPrintable(test));
}

void TestMutants::judgeFrom(std::atomic<std::size_t> &next)
{
    for (std::size_t i = next++; i < m_mutants.size(); i = next++) {
        if (!survives(m_mutants[i].number))
            continue;
        const std::lock_guard guard(m_lock);
        m_survivors.push_back(m_mutants[i]);
    }
}

bool TestMutants::isExcused(const ListedMutant &mutant)
{
    bool excused = false;
    for (std::size_t i = 0; i < m_equivalents.size(); ++i) {
        if (!m_equivalents[i].names(mutant))
            continue;
        m_isUsed[i] = true;
        excused = true;
    }
    return excused;
}

void TestMutants::everyMutantIsKilled()
{
    std::atomic<std::size_t> next = 0;
    std::thread second([this, &next] { judgeFrom(next); });
    judgeFrom(next);
    second.join();
    std::sort(m_survivors.begin(), m_survivors.end(),
              [](const ListedMutant &a, const ListedMutant &b) { return a.number < b.number; });

    int excused = 0;
    QStringList unexcused;
    for (const ListedMutant &mutant : m_survivors) {
        if (isExcused(mutant))
            ++excused;
        else
            unexcused << QString::fromStdString(mutant.text());
    }
    const auto all = static_cast<qsizetype>(m_mutants.size());
    qInfo("%lld mutants, %lld killed, %d equivalent, %lld survive; %.1f s of processor time", all,
          all - excused - unexcused.size(), excused, unexcused.size(), childSeconds());
    for (const QString &line : std::as_const(unexcused))
        qInfo("survives: %s", qPrintable(line));
    QVERIFY(unexcused.isEmpty());
    for (std::size_t i = 0; i < m_equivalents.size(); ++i)
        QVERIFY2(m_isUsed[i], ("equivalent.txt names no survivor: " + m_equivalents[i].file + ": " +
                               m_equivalents[i].what + "   [" + m_equivalents[i].lineText + "]")
                                  .c_str());
}

QTEST_GUILESS_MAIN(TestMutants)
#include "tst_mutants.moc"
