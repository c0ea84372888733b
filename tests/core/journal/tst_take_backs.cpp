#include <QtTest>

#include "core/journal/fields.h"
#include "core/journal/take_backs.h"

#include <algorithm>
#include <random>

using namespace lidlark;
using namespace lidlark::journal;

namespace {

constexpr std::int64_t noon = 20'000 * msPerDay + 12 * msPerHour;

/// What people say, one after the other.
class Journal
{
public:
    Event &say(const char *author, const char *device, Kind kind, const std::string &fields,
               LaneKind lane = LaneKind::Box)
    {
        Event event;
        event.lane = {lane, "scope"};
        event.device = {device};
        event.counter = m_events.size() + 1;
        event.instant = {noon + static_cast<std::int64_t>(m_events.size()) * msPerMinute, 0};
        event.when = dayPartAt(event.instant.ms, 0);
        event.author = author;
        event.kind = kind;
        event.fields = fields;
        m_events.push_back(event);
        return m_events.back();
    }
    Event lost(const char *author, const char *device)
    {
        return say(author, device, Kind::Found, R"({"count":1,"item":"eyes"})");
    }
    Event takeBack(const char *author, const char *device, const Event &event)
    {
        return say(author, device, Kind::TakenBack, fieldsOfTakingBack(event), event.lane.kind);
    }
    /// @p event stands, whatever the order of arrival, and however often each arrives.
    bool stands(const Event &event) const
    {
        std::vector<Event> events = m_events;
        std::mt19937 random(7);
        const bool first = isAmong(event, withoutTakenBack(events));
        for (int round = 0; round < 5; ++round) {
            std::shuffle(events.begin(), events.end(), random);
            if (isAmong(event, withoutTakenBack(events)) != first)
                qFatal("the order of arrival decides");
        }
        return first;
    }
    std::vector<Event> &events() { return m_events; }

private:
    static bool isAmong(const Event &event, const std::vector<Event> &events)
    {
        return std::find(events.begin(), events.end(), event) != events.end();
    }
    std::vector<Event> m_events;
};

} // namespace

/// What is taken back within the day counts no more (design.md 3: undo instead of a question). The
/// rule is the project's own; there is nothing outside it to compare with.
class TestTakeBacks : public QObject
{
    Q_OBJECT

private slots:
    void takenBackPutInAgainAndTakenBackOnceMore()
    {
        Journal journal;
        const Event word = journal.lost("Ruth", "d-ruth");
        QVERIFY(journal.stands(word));
        const Event first = journal.takeBack("Ruth", "d-ruth", word);
        QVERIFY(!journal.stands(word));
        const Event again = journal.takeBack("Ruth", "d-ruth", first);
        QVERIFY(journal.stands(word));
        journal.takeBack("Ruth", "d-ruth", again);
        QVERIFY(!journal.stands(word));
    }

    /// Two phones of one person each took it back: putting in again must name both.
    void twoTakingsBackBothCount()
    {
        Journal journal;
        const Event word = journal.lost("Ruth", "d-ruth");
        const Event one = journal.takeBack("Ruth", "d-ruth", word);
        const Event other = journal.takeBack("Ruth", "d-tablet", word);
        journal.takeBack("Ruth", "d-ruth", one);
        QVERIFY(!journal.stands(word));
        journal.takeBack("Ruth", "d-ruth", other);
        QVERIFY(journal.stands(word));
    }

    void thePersonOrThePhoneMaySayIt_data()
    {
        QTest::addColumn<QByteArray>("author");
        QTest::addColumn<QByteArray>("device");
        QTest::addColumn<bool>("counts");
        QTest::newRow("the same person") << QByteArray("Ruth") << QByteArray("d-tablet") << true;
        QTest::newRow("the same phone") << QByteArray("Gran") << QByteArray("d-ruth") << true;
        QTest::newRow("somebody else") << QByteArray("Gran") << QByteArray("d-gran") << false;
    }

    void thePersonOrThePhoneMaySayIt()
    {
        QFETCH(QByteArray, author);
        QFETCH(QByteArray, device);
        QFETCH(bool, counts);
        Journal journal;
        const Event word = journal.lost("Ruth", "d-ruth");
        journal.takeBack(author.constData(), device.constData(), word);
        QCOMPARE(journal.stands(word), !counts);
    }

    /// events.md 8.2: a safety statement is corrected by its own author alone, and the phone it was
    /// said on is not a person.
    void aSafetyStatementGivesWayToItsAuthorAlone()
    {
        Journal journal;
        const Event yes =
            journal.say("Ruth", "d-ruth", Kind::Fact,
                        R"({"fact":"latex","person":"","value":"yes"})", LaneKind::Safety);
        journal.takeBack("Gran", "d-ruth", yes);
        QVERIFY(journal.stands(yes));
        journal.takeBack("Ruth", "d-tablet", yes);
        QVERIFY(!journal.stands(yes));
    }

    /// events.md 8.3: a withdrawn permission is loosened by nobody's slip.
    void whatHasItsOwnWayBackIsNotTouched_data()
    {
        QTest::addColumn<int>("kind");
        for (const Kind kind : {Kind::Met, Kind::Child, Kind::Member, Kind::Revision,
                                Kind::Permission, Kind::Offered, Kind::CheckIn, Kind::Goal})
            QTest::newRow(std::string(kindNames.of(kind)).c_str()) << static_cast<int>(kind);
    }

    void whatHasItsOwnWayBackIsNotTouched()
    {
        QFETCH(int, kind);
        Journal journal;
        const Event word =
            journal.say("Ruth", "d-ruth", static_cast<Kind>(kind), R"({"name":"spin"})");
        journal.takeBack("Ruth", "d-ruth", word);
        QVERIFY(journal.stands(word));
    }

    void onlyWithinTheDay()
    {
        Journal journal;
        const Event word = journal.lost("Ruth", "d-ruth");
        Event &late = journal.say("Ruth", "d-ruth", Kind::TakenBack, fieldsOfTakingBack(word));
        late.when.day = word.when.day + 1;
        QVERIFY(journal.stands(word));
    }

    void anotherLaneOrNoSuchEventChangesNothing()
    {
        Journal journal;
        const Event word = journal.lost("Ruth", "d-ruth");
        journal.say("Ruth", "d-ruth", Kind::TakenBack, fieldsOfTakingBack(word), LaneKind::Home);
        journal.say("Ruth", "d-ruth", Kind::TakenBack, R"({"about":"item:eyes","event":"none"})");
        journal.say("Ruth", "d-ruth", Kind::TakenBack, R"({"about":"item:eyes"})");
        QVERIFY(journal.stands(word));
    }

    /// The subject of a taking back is that of the word, so one subject's events are enough.
    void itBelongsToTheSubjectOfTheWord()
    {
        Journal journal;
        const Event word = journal.lost("Ruth", "d-ruth");
        const Event taking = journal.takeBack("Ruth", "d-ruth", word);
        QCOMPARE(subjectOf(taking), std::string("item:eyes"));
        QCOMPARE(subjectOf(journal.takeBack("Ruth", "d-ruth", taking)), std::string("item:eyes"));
    }

    /// A hostile chain is long, and no deeper than the stack.
    void aLongChainIsFollowedToItsEnd()
    {
        Journal journal;
        const Event word = journal.lost("Ruth", "d-ruth");
        Event last = word;
        constexpr int links = 3001;
        for (int link = 0; link < links; ++link)
            last = journal.takeBack("Ruth", "d-ruth", last);
        const auto standing = withoutTakenBack(journal.events());
        QVERIFY(standing.empty()); // an odd number of words against it
    }

    void oneBreathIsKnownByItsFirstWord()
    {
        Journal journal;
        Event first = journal.lost("Ruth", "d-ruth");
        Event second = journal.lost("Ruth", "d-ruth");
        QCOMPARE(breathOf(second), second.counter);
        second.fields = fieldsWith(second.fields, first.counter);
        QCOMPARE(breathOf(second), breathOf(first));
        QCOMPARE(Fields(second.fields).text("item").value_or(""), std::string("eyes"));
        second.fields = R"({"with":"first"})";
        QCOMPARE(breathOf(second), second.counter);
    }
};

QTEST_APPLESS_MAIN(TestTakeBacks)
#include "tst_take_backs.moc"
