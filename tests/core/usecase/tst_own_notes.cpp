#include <QtTest>

#include "core/store/event_repository.h"
#include "core/store/projector.h"
#include "core/usecase/noted_today.h"
#include "core/usecase/notes_lane.h"
#include "core/usecase/our_way.h"
#include "core/usecase/own_notes.h"
#include "core/usecase/take_back.h"

#include "tests/support/phone.h"

using namespace lidlark;
using namespace lidlark::test;

namespace {

std::unique_ptr<Phone> phoneOf(const char *person, store::Role role = store::Role::Parent)
{
    auto morven = therapistWith({"Fin"});
    auto phone = std::make_unique<Phone>(person, role, "h-fin");
    phone->meet(*morven);
    return phone;
}

std::vector<play::OwnNote> notesOn(Phone &phone)
{
    usecase::Workplace workplace = phone.workplace();
    auto notes = usecase::ownNotes(workplace, "Fin");
    return notes ? *std::move(notes) : std::vector<play::OwnNote>();
}

bool matches(Phone &phone)
{
    const auto same = store::Projector(phone.database).matchesRefold();
    return same && *same;
}

/// Whether any event of the store still holds @p words.
bool isWritten(Phone &phone, const std::string &words)
{
    auto query = phone.database.prepare("SELECT 1 FROM event WHERE instr(fields, ?1) > 0");
    query->bind(1, words);
    return *query->step();
}

std::string umlauts(std::size_t count)
{
    std::string text;
    for (std::size_t i = 0; i < count; ++i)
        text += "\xC3\xBC";
    return text;
}

const ActivityId coast{"torn-paper-coast"};

} // namespace

/// job.md G9 and F12.
class TestOwnNotes : public QObject
{
    Q_OBJECT

private slots:
    void aNoteIsKeptNewestFirst()
    {
        auto ruth = phoneOf("Ruth");
        usecase::Workplace workplace = ruth->workplace();
        QVERIFY(usecase::keepNote(workplace, "Fin", "  Ask about umbrellas ").ok());
        QVERIFY(usecase::keepNote(workplace, "Fin", play::NotePhrase::QuieterPlace).ok());
        const auto notes = notesOn(*ruth);
        QCOMPARE(notes.size(), std::size_t{2});
        QVERIFY(notes.front().phrase == play::NotePhrase::QuieterPlace);
        QCOMPARE(notes.back().words, std::string("Ask about umbrellas"));
        QVERIFY(!notes.front().sent);
        QVERIFY(matches(*ruth));
    }

    void whatDoesNotFitIsToldAndNothingKept_data()
    {
        QTest::addColumn<QByteArray>("words");
        QTest::newRow("nothing") << QByteArray(" \t ");
        QTest::newRow("two lines") << QByteArray("one\ntwo");
        QTest::newRow("too long") << QByteArray(umlauts(play::longestNote + 1).c_str());
        QTest::newRow("no text") << QByteArray("\xFF\xFE");
    }

    void whatDoesNotFitIsToldAndNothingKept()
    {
        QFETCH(QByteArray, words);
        auto ruth = phoneOf("Ruth");
        usecase::Workplace workplace = ruth->workplace();
        const auto kept = usecase::keepNote(workplace, "Fin", words.toStdString());
        QCOMPARE(kept.error().code, ErrorCode::Invalid);
        QVERIFY(notesOn(*ruth).empty());
    }

    /// A person counts characters, not bytes.
    void theLongestNoteFits()
    {
        auto ruth = phoneOf("Ruth");
        usecase::Workplace workplace = ruth->workplace();
        QVERIFY(usecase::keepNote(workplace, "Fin", umlauts(play::longestNote)).ok());
    }

    /// design.md 9: what each role can read is enforced by lanes. Another adult of the home, on
    /// another phone, takes in all of the home and none of it.
    void notesAreNobodyElses()
    {
        auto ruth = phoneOf("Ruth");
        usecase::Workplace workplace = ruth->workplace();
        QVERIFY(usecase::keepNote(workplace, "Fin", "Ask about umbrellas").ok());
        Phone gran("Gran", store::Role::Caregiver, "h-fin");
        gran.meet(*ruth);
        QVERIFY(!isWritten(gran, "umbrellas"));
        QVERIFY(notesOn(gran).empty());
        QVERIFY(usecase::notesLaneOf(ruth->device) != usecase::notesLaneOf(gran.device));
        store::Device tablet = ruth->device;
        tablet.id = {"d-tablet"};
        QCOMPARE(usecase::notesLaneOf(ruth->device), usecase::notesLaneOf(tablet));
        QVERIFY(usecase::notesLaneOf(tablet).scope.find("Ruth") == std::string::npos);
    }

    /// "private unless send is chosen each time": one note's choice is no other's.
    void eachNoteIsChosenByItself()
    {
        auto ruth = phoneOf("Ruth");
        usecase::Workplace workplace = ruth->workplace();
        const auto first = usecase::keepNote(workplace, "Fin", "first");
        const auto second = usecase::keepNote(workplace, "Fin", "second");
        QVERIFY(usecase::chooseToSend(workplace, "Fin", *first, true).ok());
        QVERIFY(!notesOn(*ruth).front().sent);
        QVERIFY(notesOn(*ruth).back().sent);
        QVERIFY(usecase::chooseToSend(workplace, "Fin", *first, false).ok());
        QVERIFY(!notesOn(*ruth).back().sent);
        QVERIFY(usecase::chooseToSend(workplace, "Fin", *first, true).ok());
        QVERIFY(notesOn(*ruth).back().sent);
        QVERIFY(matches(*ruth));
        ruth->clock.moveTo(islandTime(12, 9, 0));
        QVERIFY(!usecase::chooseToSend(workplace, "Fin", *first, false).ok());
        QVERIFY(notesOn(*ruth).back().sent);
        QVERIFY(second.ok());
    }

    /// Taken off it can be put in again until the day is over; then its words are gone for good.
    void aRemovedNoteIsErasedTheNextDay()
    {
        auto ruth = phoneOf("Ruth");
        usecase::Workplace workplace = ruth->workplace();
        const auto kept = usecase::keepNote(workplace, "Fin", "Ask about umbrellas");
        QVERIFY(usecase::removeNote(workplace, "Fin", *kept).ok());
        QVERIFY(notesOn(*ruth).empty());
        QVERIFY(usecase::eraseRemovedNotes(workplace).ok());
        const auto last = usecase::lastNotedBy(workplace, "Fin", {});
        QVERIFY(usecase::takeBack(workplace, {"Fin", {}, *last}).ok());
        QCOMPARE(notesOn(*ruth).size(), std::size_t{1});
        QVERIFY(usecase::removeNote(workplace, "Fin", *kept).ok());
        ruth->clock.moveTo(islandTime(12, 9, 0));
        QVERIFY(isWritten(*ruth, "umbrellas"));
        QVERIFY(usecase::eraseRemovedNotes(workplace).ok());
        QVERIFY(!isWritten(*ruth, "umbrellas"));
        QVERIFY(notesOn(*ruth).empty());
        QVERIFY(matches(*ruth));
        QCOMPARE(usecase::removeNote(workplace, "Fin", *kept).error().code, ErrorCode::NotFound);
    }

    void ourWayIsKeptChangedTakenOffAndPutInAgain()
    {
        auto ruth = phoneOf("Ruth");
        usecase::Workplace workplace = ruth->workplace();
        const auto way = [&] { return *usecase::ourWayOf(workplace, "Fin", coast); };
        QVERIFY(!way());
        QVERIFY(usecase::keepOurWay(workplace, "Fin", coast, "With old newspaper").ok());
        QCOMPARE(way()->words, std::string("With old newspaper"));
        QVERIFY(usecase::keepOurWay(workplace, "Fin", coast, "With wrapping paper").ok());
        QVERIFY(usecase::keepOurWay(workplace, "Fin", coast, "").ok());
        QVERIFY(!way());
        const auto last = usecase::lastNotedBy(workplace, "Fin", {});
        QVERIFY(usecase::takeBack(workplace, {"Fin", {}, *last}).ok());
        QCOMPARE(way()->words, std::string("With wrapping paper"));
        QVERIFY(matches(*ruth));
    }

    /// It stays on the family's devices: the therapist's phone takes in none of it.
    void ourWayStaysInTheHome()
    {
        auto morven = therapistWith({"Fin"});
        Phone ruth("Ruth", store::Role::Parent, "h-fin");
        ruth.meet(*morven);
        usecase::Workplace workplace = ruth.workplace();
        QVERIFY(usecase::keepOurWay(workplace, "Fin", coast, "With old newspaper").ok());
        morven->meet(ruth);
        QVERIFY(!isWritten(*morven, "newspaper"));
        Phone gran("Gran", store::Role::Caregiver, "h-fin");
        gran.meet(ruth);
        usecase::Workplace hers = gran.workplace();
        QCOMPARE((*usecase::ourWayOf(hers, "Fin", coast))->words,
                 std::string("With old newspaper"));
    }

    void ourWayThatDoesNotFit()
    {
        auto ruth = phoneOf("Ruth");
        usecase::Workplace workplace = ruth->workplace();
        const auto code = [&](const ActivityId &activity, const std::string &words) {
            const Outcome done = usecase::keepOurWay(workplace, "Fin", activity, words);
            return done ? std::optional<ErrorCode>() : std::optional(done.error().code);
        };
        QVERIFY(code(coast, umlauts(play::longestWay + 1)) == ErrorCode::Invalid);
        QVERIFY(code(coast, "a\nb") == ErrorCode::Invalid);
        QVERIFY(code({"no-such-activity"}, "a") == ErrorCode::NotFound);
        QVERIFY(!code(coast, umlauts(play::longestWay)));
        auto guest = phoneOf("Effie", store::Role::Guest);
        usecase::Workplace hers = guest->workplace();
        QCOMPARE(usecase::keepOurWay(hers, "Fin", coast, "a").error().code, ErrorCode::Invalid);
    }
};

QTEST_APPLESS_MAIN(TestOwnNotes)
#include "tst_own_notes.moc"
