#include <QtTest>

#include "core/box/box_events.h"
#include "core/box/piece_events.h"
#include "core/box/place.h"
#include "core/box/request_events.h"
#include "core/child/home_facts.h"
#include "core/play/own_note.h"
#include "core/play/plan_events.h"
#include "core/play/play_events.h"
#include "core/wording/note_words.h"
#include "core/wording/noted_words.h"

#include "tests/support/phone.h"

#include <set>

using namespace lidlark;
using namespace lidlark::wording;
using journal::Event;
using journal::Kind;

namespace {

const Day monday = *dayFrom({2027, 1, 11});

Event said(Kind kind, const std::string &fields)
{
    Event event;
    event.kind = kind;
    event.fields = fields;
    event.when = {monday, PartOfDay::Evening};
    return event;
}

/// Every line of the act, one under the other.
std::string told(const std::vector<Event> &act, const std::string &person = {})
{
    std::string text;
    for (const Sentence &line :
         notedWords(act, {test::realCatalogue(), {"torn-paper-coast"}, person, monday}))
        text += (text.empty() ? "" : "\n") + fill(line);
    return text;
}

std::string told(Kind kind, const std::string &fields, const std::string &person = {})
{
    return told(std::vector{said(kind, fields)}, person);
}

} // namespace

/// The words are the project's own (look.md 8).
class TestNotedWords : public QObject
{
    Q_OBJECT

private slots:
    void aLineForEachKind_data()
    {
        QTest::addColumn<QString>("line");
        QTest::addColumn<QString>("expected");
        const auto row = [](const char *name, const std::string &line, const char *expected) {
            QTest::newRow(name) << QString::fromStdString(line) << QString::fromUtf8(expected);
        };
        using namespace box;
        const ItemId pegs{"pegs"};
        row("lost",
            told(Kind::Exception, fieldsOf(LooseException{pegs, ExceptionKind::Lost, 2, {}})),
            "2 pegs lost");
        row("one lost",
            told(Kind::Exception, fieldsOf(LooseException{pegs, ExceptionKind::Lost, 1, {}})),
            "1 peg lost");
        row("back",
            told(Kind::Exception,
                 fieldsOf(LooseException{pegs, ExceptionKind::StillInUse, -1, {}})),
            "1 peg back in the box");
        row("found", told(Kind::Found, fieldsOf(Found{pegs, 1})), "1 peg found");
        row("counted", told(Kind::Count, fieldsOf(Counted{pegs, 5, 0})), "Pegs: 5 counted");
        row("checked", told(Kind::FloorChecked, fieldsOf(FloorChecked{pegs, "x"})),
            "Pegs: floor checked, not found");
        row("opened", told(Kind::Opened, fieldsOf(Opened{{"dough"}, {"packed/0"}, monday})),
            "Dough: opened today");
        row("opened before",
            told(Kind::Opened, fieldsOf(Opened{{"dough"}, {"packed/0"}, monday - 7})),
            "Dough: opened 4 January");
        row("not opened", told(Kind::Opened, fieldsOf(Opened{{"dough"}, {"packed/0"}, {}})),
            "Dough: not opened after all");
        row("left open", told(Kind::LeftOpen, fieldsOf(LeftOpen{{"dough"}, {"packed/0"}, monday})),
            "Dough: found left open");
        row("good", told(Kind::Checked, fieldsOf(Checked{pegs, monday})),
            "Pegs: looked over, good");
        row("limit", told(Kind::Limit, fieldsOf(KeepingLimit{{"dough"}, 3})),
            "Dough: once opened, keeps days: 3");
        row("mouthed", told(Kind::Hygiene, fieldsOf(HygieneSaid{pegs, HygieneMark::Mouthed})),
            "Pegs: was in a mouth");
        row("out", told(Kind::TakenOut, fieldsOf(TakenOut{pegs, "latex"})),
            "Pegs: out of the house");
        row("place", told(Kind::Place, fieldsOfPlace("school", "at school")), "Box: at school");
        row("asked", told(Kind::Request, fieldsOf(RequestSaid{pegs, 0, RequestStep::Asked, {}})),
            "Pegs: asked for");
        row("came", told(Kind::CountedIn, fieldsOf(CountedIn{pegs, 0, 4})), "4 pegs counted in");
        row("answer", told(Kind::Answer, fieldsOf(Answered{pegs, "q", "two"})),
            "Pegs: question answered");
        row("latex", told(Kind::Fact, child::fieldsOf(child::Fact{"", "latex", "yes"})),
            "Home sheet: latex must stay away");
        row("mouths", told(Kind::Fact, child::fieldsOf(child::Fact{"p", "mouths", "no"}), "Mirren"),
            "Home sheet: Mirren puts nothing in the mouth");
        row("another fact",
            told(Kind::Fact, child::fieldsOf(child::Fact{"p", "born-by", "2024-01-31"}), "Mirren"),
            "Home sheet: something said of Mirren");
        row("begun",
            told(Kind::PlayStarted,
                 play::fieldsOf(play::Started{{"p"}, {"c"}, {"torn-paper-coast"}, 1})),
            "Torn-Paper Coast: begun");
        row("all back", told(Kind::PlayEnded, play::fieldsOfEnding({"p"}, play::Ending::AllBack)),
            "Torn-Paper Coast: all back");
        row("stopped", told(Kind::PlayEnded, play::fieldsOfEnding({"p"}, play::Ending::Stopped)),
            "Torn-Paper Coast: stopped early");
        row("noticed",
            told(Kind::Reaction, play::fieldsOfReaction({"p"}, play::Phrase::NeededHelp)),
            "Torn-Paper Coast: needed help");
        row("kept",
            told(Kind::Planned,
                 play::fieldsOf(ChildId{"c"}, monday,
                                play::DayWish{play::Wish::Keep, {"torn-paper-coast"}})),
            "Torn-Paper Coast: kept for Monday");
        row("free",
            told(Kind::Planned,
                 play::fieldsOf(ChildId{"c"}, monday, play::DayWish{play::Wish::Free, {}})),
            "Monday: left free");
        row("removed", told(Kind::Note, play::fieldsOfNoteRemoval("n", {"c"})),
            "A note of your own taken off");
        row("malformed", told(Kind::Found, "{}"), "Something noted");
    }

    void aLineForEachKind()
    {
        QFETCH(QString, line);
        QFETCH(QString, expected);
        QCOMPARE(line, expected);
    }

    void oneActMayHaveSeveralLines()
    {
        box::Outcome burst{{"p"}, {"pegs"}, {}, false};
        burst.exceptions.set(box::ExceptionKind::UsedUp, 1);
        burst.exceptions.set(box::ExceptionKind::Lost, 2);
        QCOMPARE(told(Kind::Outcome, box::fieldsOf(burst)),
                 std::string("1 peg used up\n2 pegs lost"));
        burst.exceptions = {};
        QCOMPARE(told(Kind::Outcome, box::fieldsOf(burst)), std::string("Pegs: all back"));
    }

    void aFullCountIsOneLine()
    {
        const Event one = said(Kind::Count, box::fieldsOf(box::Counted{{"pegs"}, 5, 0}));
        const Event other = said(Kind::Count, box::fieldsOf(box::Counted{{"eyes"}, 2, 0}));
        QCOMPARE(told({one, other}), std::string("2 things counted"));
    }

    void whoAndWhen() { QCOMPARE(fill(notedBy("Ruth", 18 * 60 + 5)), std::string("Ruth, 18:05")); }

    void everyPhraseHasWordsOfItsOwn()
    {
        std::set<std::string> words;
        for (std::size_t i = 0; i < play::notePhraseCount; ++i)
            words.insert(
                std::string(notePhraseWords(static_cast<play::NotePhrase>(i)).english.text()));
        QCOMPARE(words.size(), play::notePhraseCount);
        QVERIFY(!words.contains(""));
    }
};

QTEST_APPLESS_MAIN(TestNotedWords)
#include "tst_noted_words.moc"
