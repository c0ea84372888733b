#include <QTest>

#include "core/sync/patient_storage.h"
#include "core/sync/publish.h"
#include "shaky_storage.h"

#include <functional>
#include <set>

using namespace lidlark;
using namespace lidlark::sync;
using std::chrono::milliseconds;

namespace {

const Place place{"f0", "a1"};

/// Gives one trouble to every call, for so many calls; then all is well.
class Troubled final : public Storage
{
public:
    Troubled(Trouble trouble, int times) : m_trouble(trouble), m_times(times) {}
    int calls = 0;

    Answer<bool> makeFolder(const std::string &) override { return give(true); }
    Answer<std::vector<std::string>> list(const std::string &) override
    {
        return give(std::vector<std::string>{"a1"});
    }
    Answer<std::optional<std::uint64_t>> sizeOf(const Place &) override
    {
        return give(std::optional<std::uint64_t>(3));
    }
    Answer<std::optional<std::string>> get(const Place &) override
    {
        return give(std::optional<std::string>("one"));
    }
    Answer<bool> put(const Place &, std::string_view) override { return give(true); }
    Answer<Moved> move(const Place &, const std::string &) override { return give(Moved::Done); }
    Answer<bool> remove(const Place &) override { return give(true); }

private:
    template <class T> Answer<T> give(T good)
    {
        return ++calls <= m_times ? Answer<T>(m_trouble) : Answer<T>(std::move(good));
    }
    Trouble m_trouble;
    int m_times;
};

/// Patience that does not wait, and remembers how long it would have.
struct Watched {
    std::vector<milliseconds> waits;
    int mostWaits = 1000;
    SeededEntropy entropy;
    Patience patience;

    explicit Watched(Backoff backoff = {}, const std::string &phone = "phone")
        : entropy(phone), patience(
                              entropy,
                              [this](milliseconds wait) {
                                  waits.push_back(wait);
                                  return static_cast<int>(waits.size()) <= mostWaits;
                              },
                              backoff)
    {
    }
};

/// The trouble that every call gave but move; nothing where they differ.
std::optional<Trouble> troubleOfAll(Storage &storage)
{
    const auto trouble = troubleIn(storage.get(place));
    const bool isOfAll = troubleIn(storage.makeFolder("f0")) == trouble &&
                         troubleIn(storage.list("f0")) == trouble &&
                         troubleIn(storage.sizeOf(place)) == trouble &&
                         troubleIn(storage.put(place, "one")) == trouble &&
                         troubleIn(storage.remove(place)) == trouble;
    return isOfAll ? trouble : std::nullopt;
}

} // namespace

/// Guards that a phone asks again where that helps, never where it cannot, and not all phones at
/// once.
class TestPatientStorage : public QObject
{
    Q_OBJECT

private slots:
    void whatPassesIsAskedAgain()
    {
        for (const Trouble passing : {Trouble::Unreachable, Trouble::Locked}) {
            for (const auto &call : std::vector<std::function<bool(Storage &)>>{
                     [](Storage &s) { return std::get<0>(s.makeFolder("f0")); },
                     [](Storage &s) { return std::get<0>(s.list("f0")).size() == 1; },
                     [](Storage &s) { return std::get<0>(s.sizeOf(place)) == 3; },
                     [](Storage &s) { return std::get<0>(s.get(place)) == "one"; },
                     [](Storage &s) { return std::get<0>(s.put(place, "one")); },
                     [](Storage &s) { return std::get<0>(s.remove(place)); }}) {
                Watched watched;
                Troubled troubled(passing, 4);
                PatientStorage storage(troubled, watched.patience);
                QVERIFY(call(storage));
                QCOMPARE(troubled.calls, 5);
                QCOMPARE(watched.waits.size(), std::size_t{4});
            }
        }
    }

    void whatDoesNotPassIsAskedOnce()
    {
        for (const Trouble lasting :
             {Trouble::Refused, Trouble::NotTrusted, Trouble::Full, Trouble::Odd}) {
            Watched watched;
            Troubled troubled(lasting, 1000);
            PatientStorage storage(troubled, watched.patience);
            QCOMPARE(troubleOfAll(storage), std::optional(lasting));
            QCOMPARE(troubleIn(storage.move(place, "a2")), std::optional(lasting));
            QCOMPARE(troubled.calls, 7);
            QVERIFY(watched.waits.empty());
        }
    }

    void patienceHasAnEnd()
    {
        Watched watched;
        Troubled troubled(Trouble::Unreachable, 1000);
        PatientStorage storage(troubled, watched.patience);
        QCOMPARE(troubleIn(storage.get(place)), std::optional(Trouble::Unreachable));
        QCOMPARE(troubled.calls, Backoff().tries);
    }

    void whoeverStopsWaitingIsNotKept()
    {
        Watched watched;
        watched.mostWaits = 1;
        Troubled troubled(Trouble::Unreachable, 1000);
        PatientStorage storage(troubled, watched.patience);
        QCOMPARE(troubleIn(storage.get(place)), std::optional(Trouble::Unreachable));
        QCOMPARE(troubled.calls, 2);
    }

    /// A move without an answer may have been done: asking again could not tell.
    void aMoveIsNotMadeTwice()
    {
        Watched watched;
        Troubled silent(Trouble::Unreachable, 1);
        QCOMPARE(troubleIn(PatientStorage(silent, watched.patience).move(place, "a2")),
                 std::optional(Trouble::Unreachable));
        QCOMPARE(silent.calls, 1);
        Troubled locked(Trouble::Locked, 2);
        QCOMPARE(std::get<0>(PatientStorage(locked, watched.patience).move(place, "a2")),
                 Storage::Moved::Done);
        QCOMPARE(locked.calls, 3);
    }

    /// Doubling, up to a bound, and half of it by chance (exponential back-off with jitter: common
    /// practice, no source).
    void eachPauseIsLongerAndNoneTheSame()
    {
        Backoff backoff;
        backoff.tries = 9;
        backoff.first = milliseconds(1000);
        backoff.longest = milliseconds(8000);
        const std::vector<int> longest{1000, 2000, 4000, 8000, 8000, 8000, 8000, 8000};
        std::set<milliseconds> firsts;
        for (int phone = 0; phone < 20; ++phone) {
            Watched watched(backoff, std::to_string(phone));
            Troubled troubled(Trouble::Unreachable, 1000);
            (void)PatientStorage(troubled, watched.patience).get(place);
            QCOMPARE(watched.waits.size(), longest.size());
            for (std::size_t wait = 0; wait < longest.size(); ++wait) {
                QVERIFY(watched.waits[wait] >= milliseconds(longest[wait] / 2));
                QVERIFY(watched.waits[wait] <= milliseconds(longest[wait]));
            }
            firsts.insert(watched.waits.front());
        }
        QVERIFY(firsts.size() > 10);
    }

    /// The whole of publishing, asked with patience, on a wire that breaks three times of ten.
    void publishingWithPatienceComesToItsEnd()
    {
        for (unsigned seed = 0; seed < 50; ++seed) {
            samples::ShakyStorage shaky(seed, 30);
            Backoff backoff;
            backoff.tries = 50;
            Watched watched(backoff);
            PatientStorage storage(shaky, watched.patience);
            const auto published = watched.patience.ask(
                [&] { return publish(storage, place, "bytes", watched.entropy); });
            QCOMPARE(std::get<Published>(published), Published::Done);
            QCOMPARE(shaky.files.at(place), std::string("bytes"));
        }
    }
};

QTEST_APPLESS_MAIN(TestPatientStorage)
#include "tst_patient_storage.moc"
