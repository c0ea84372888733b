#include <QtTest>

#include "core/goals/goal_record.h"
#include "core/goals/rater_scores.h"
#include "core/journal/fields.h"
#include "core/wording/goal_words.h"

#include <rapidcheck.h>

#include <algorithm>
#include <random>

using namespace lidlark;
using namespace lidlark::goals;
using journal::Event;
using journal::Kind;

namespace {

const Day agreed = *dayFrom({2027, 1, 4});

AgreedGoal lunchTub(int version = 1, const std::string &last = "opens a friend's tub too")
{
    AgreedGoal goal;
    goal.id = "g";
    goal.words = "Opens his lunch tub";
    goal.shortWords = "opening his lunch tub";
    goal.levels = {"an adult opens it", "holds it", "lifts the lid", "lifts it unasked", last};
    goal.agreedOn = agreed;
    goal.reviewOn = agreed + 84;
    goal.version = version;
    return goal;
}

Rating rated(const AgreedGoal &goal, int level, RatedBy role, const std::string &rater, int day)
{
    return {goal.id, {"c-fin"}, keyOf(goal), level, rater, role, agreed + day};
}

/// What several devices say of one goal.
class Talk
{
public:
    Event &say(const std::string &device, Kind kind, const std::string &fields)
    {
        Event event;
        event.lane = {journal::LaneKind::Goals, "b-fin"};
        event.device = {device};
        event.author = device;
        event.counter = ++m_counters[device];
        event.instant = {(agreed.number + static_cast<std::int64_t>(m_events.size())) * msPerDay,
                         0};
        event.kind = kind;
        event.fields = fields;
        m_events.push_back(event);
        return m_events.back();
    }
    Event &agree(const std::string &device, const AgreedGoal &goal)
    {
        return say(device, Kind::Goal, goals::fieldsOf(ChildsGoal{{"c-fin"}, goal}));
    }
    Event &turn(const std::string &device, const AgreedGoal &goal, Turn turn,
                const std::string &words = {})
    {
        const GoalTurn said{turn, agreed + static_cast<std::int32_t>(m_events.size()), words, {}};
        return say(device, Kind::Goal, goals::fieldsOf(ChildsGoal{{"c-fin"}, goal, said}));
    }
    Event &rate(const std::string &device, const Rating &rating)
    {
        return say(device, Kind::GoalRated, fieldsOf(rating));
    }
    /// @p device has all that was said so far.
    void meet(const std::string &device) { say(device, Kind::Met, journal::metFields(m_counters)); }

    /// The record, which is the same in many orders and with repeats.
    [[nodiscard]] std::optional<GoalRecord> fold() const
    {
        std::vector<Event> events = m_events;
        const auto first = foldGoal(events, journal::Seen(events));
        std::mt19937 random(11);
        for (int round = 0; round < 6; ++round) {
            events.push_back(m_events[static_cast<std::size_t>(round) % m_events.size()]);
            std::shuffle(events.begin(), events.end(), random);
            if (foldGoal(events, journal::Seen(events)) != first)
                qFatal("the order of arrival decides");
        }
        return first;
    }

private:
    std::vector<Event> m_events;
    std::map<std::string, std::uint64_t> m_counters;
};

} // namespace

/// Guards job.md T11: levels are frozen, other words are another version, and raters stand side by
/// side. The law of events.md 1: the same events give the same record in any order.
class TestGoalRecord : public QObject
{
    Q_OBJECT

private slots:
    void aGoalStandsWhereItWasAgreed()
    {
        Talk talk;
        talk.agree("morven", lunchTub());
        const auto record = talk.fold();
        QCOMPARE(record->current().goal, lunchTub());
        QCOMPARE(record->current().goal.now, -1);
        QVERIFY(record->current().ratings.empty());
    }

    void whatAnEarlierReleaseWroteIsRead()
    {
        Talk talk;
        talk.say("morven", Kind::Goal,
                 R"({"agreed":"2027-01-04","areas":[],"child":"c-fin","id":"g",)"
                 R"("levels":["a","b","c","d","e"],"now":-2,"review":"2027-03-29",)"
                 R"("short":"opening","skills":["BIL"],"words":"Opens it"})");
        const AgreedGoal goal = talk.fold()->current().goal;
        QCOMPARE(goal.version, 1);
        QCOMPARE(goal.baseline, -2);
        QCOMPARE(goal.weight, 1);
        QCOMPARE(goal.now, -2);
    }

    void twoRatersStandSideBySide()
    {
        Talk talk;
        talk.agree("morven", lunchTub());
        const Rating ruth = rated(lunchTub(), 1, RatedBy::Family, "Ruth", 30);
        const Rating morven = rated(lunchTub(), -1, RatedBy::Therapist, "Morven", 30);
        talk.rate("ruth", ruth);
        talk.rate("morven", morven);
        QCOMPARE(talk.fold()->current().ratings, (std::vector{ruth, morven}));
        QCOMPARE(talk.fold()->current().goal.now, -1); // nobody agreed on anything
    }

    void ofOneRaterTheLastWordOfADayCounts()
    {
        Talk talk;
        talk.agree("morven", lunchTub());
        const Rating first = rated(lunchTub(), 2, RatedBy::Family, "Ruth", 30);
        const Rating second = rated(lunchTub(), 0, RatedBy::Family, "Ruth", 30);
        const Rating later = rated(lunchTub(), 1, RatedBy::Family, "Ruth", 31);
        talk.rate("ruth", first);
        talk.rate("ruth", later);
        talk.rate("ruth", second);
        QCOMPARE(talk.fold()->current().ratings, (std::vector{second, later}));
        QCOMPARE(*latestBy(talk.fold()->current(), RatedBy::Family, "Ruth"), later);
    }

    void whatHasSeenARatingReplacesItWhateverTheClocks()
    {
        Talk talk;
        talk.agree("morven", lunchTub());
        Event &wrong = talk.rate("ruth", rated(lunchTub(), 2, RatedBy::Together, "Ruth", 30));
        wrong.instant.ms += 500 * msPerDay; // her clock is far ahead
        talk.meet("morven");
        talk.rate("morven", rated(lunchTub(), 0, RatedBy::Together, "Morven", 30));
        const auto record = talk.fold();
        QCOMPARE(record->current().ratings.size(), std::size_t{1});
        QCOMPARE(record->current().goal.now, 0);
    }

    void onlyWhatWasAgreedTogetherMovesNowAndTheLastDayCounts()
    {
        Talk talk;
        talk.agree("morven", lunchTub());
        talk.rate("morven", rated(lunchTub(), 1, RatedBy::Together, "", 40));
        talk.rate("morven", rated(lunchTub(), 0, RatedBy::Together, "", 20)); // noted late
        talk.rate("ruth", rated(lunchTub(), 2, RatedBy::Family, "Ruth", 50));
        QCOMPARE(talk.fold()->current().goal.now, 1);
        QCOMPARE(inForce(*talk.fold())->goal.now, 1);
    }

    void otherWordsAreAnotherVersionAndTheOldOneKeepsItsRatings()
    {
        Talk talk;
        const AgreedGoal before = lunchTub();
        AgreedGoal after = lunchTub(2, "opens three different tubs");
        talk.agree("morven", before);
        const Rating old = rated(before, 1, RatedBy::Together, "", 20);
        talk.rate("morven", old);
        talk.agree("morven", after);
        const auto record = talk.fold();
        QCOMPARE(record->versions.size(), std::size_t{2});
        QCOMPARE(record->current().goal, after);
        QCOMPARE(record->current().goal.now, -1); // the new words have not been looked at
        QVERIFY(record->current().ratings.empty());
        QCOMPARE(record->versions[0].ratings, std::vector{old});
        QCOMPARE(record->versions[0].goal.levels, before.levels);
    }

    void theSameNumberDoesNotMakeOtherWordsTheSame()
    {
        Talk talk;
        talk.agree("morven", lunchTub());
        talk.rate("ruth", rated(lunchTub(), 2, RatedBy::Together, "", 9));
        talk.agree("ruth",
                   lunchTub(1, "is allowed to be better")); // a changed level, no new number
        const auto record = talk.fold();
        QCOMPARE(record->versions.size(), std::size_t{2});
        for (const GoalVersion &version : record->versions) {
            const bool old = version.goal.levels == lunchTub().levels;
            QCOMPARE(version.ratings.size(), std::size_t{old ? 1U : 0U});
        }
    }

    void twoNewWordingsAtOnceAreBothKeptAndOneIsInForce()
    {
        Talk talk;
        talk.agree("morven", lunchTub());
        talk.meet("callum");
        talk.agree("morven", lunchTub(2, "opens two tubs"));
        talk.agree("callum", lunchTub(2, "opens three tubs"));
        const auto record = talk.fold();
        QCOMPARE(record->versions.size(), std::size_t{3});
        QCOMPARE(record->current().goal.levels.back(), std::string("opens three tubs"));
    }

    void aReviewMovedElsewhereDoesNotBringTheOldWordsBack()
    {
        Talk talk;
        talk.agree("morven", lunchTub());
        talk.meet("callum");
        talk.agree("morven", lunchTub(2, "opens two tubs"));
        AgreedGoal moved = lunchTub();
        moved.reviewOn = agreed + 100;
        talk.agree("callum", moved); // later, and has not seen the new words
        const auto record = talk.fold();
        QCOMPARE(record->current().goal.version, 2);
        QCOMPARE(record->versions.size(), std::size_t{2});
    }

    void anEndedGoalIsNoneOfTheChildsAndKeepsAllThatWasSaid()
    {
        Talk talk;
        talk.agree("morven", lunchTub());
        const Rating old = rated(lunchTub(), 1, RatedBy::Together, "", 20);
        talk.rate("morven", old);
        talk.turn("morven", lunchTub(), Turn::Reached, "at school, too");
        const auto record = talk.fold();
        QVERIFY(!inForce(*record));
        QCOMPARE(record->ending,
                 std::optional(GoalTurn{Turn::Reached, agreed + 2, "at school, too", "morven"}));
        QCOMPARE(record->versions.size(), std::size_t{1});
        QCOMPARE(record->current().ratings, std::vector{old});
        QCOMPARE(record->current().goal.now, 1);
    }

    void itIsTakenUpByAnAddedWordAndTheEndStaysReadable()
    {
        Talk talk;
        talk.agree("morven", lunchTub());
        talk.turn("morven", lunchTub(), Turn::MattersLess);
        talk.meet("ruth");
        Event &up = talk.turn("ruth", lunchTub(), Turn::TakenUp);
        up.instant.ms -= 300 * msPerDay; // her clock is far behind: she had seen the end
        const auto record = talk.fold();
        QVERIFY(!record->ending);
        QVERIFY(inForce(*record));
        QCOMPARE(record->turns.size(), std::size_t{2});
        talk.meet("morven");
        talk.turn("morven", lunchTub(), Turn::Replaced);
        QCOMPARE(talk.fold()->ending->turn, Turn::Replaced);
        QCOMPARE(talk.fold()->turns.size(), std::size_t{3});
    }

    /// Neither knew of the other: an end takes back no rating, no weight and no new words, and they
    /// do not undo the end.
    void whatIsSaidWhileAnotherEndsItIsNotLost()
    {
        Talk talk;
        talk.agree("morven", lunchTub());
        talk.meet("ruth");
        talk.meet("callum");
        AgreedGoal weighed = lunchTub();
        weighed.weight = 6;
        weighed.reviewOn = agreed + 100;
        const Rating old = rated(lunchTub(), 2, RatedBy::Family, "Ruth", 9);
        talk.agree("morven", weighed);
        talk.rate("ruth", old);
        talk.turn("callum", lunchTub(), Turn::Reached);
        auto record = talk.fold();
        QVERIFY(record->ending);
        QCOMPARE(record->current().goal, weighed);
        QCOMPARE(record->current().ratings, std::vector{old});
        talk.agree("morven", lunchTub(2, "opens three tubs"));
        record = talk.fold();
        QVERIFY(record->ending);
        QCOMPARE(record->current().goal.version, 2);
        QCOMPARE(record->versions[0].ratings, std::vector{old});
    }

    void anEndThatArrivesFirstTellsWhatItsAuthorKnew()
    {
        Talk talk;
        talk.turn("ruth", lunchTub(2, "opens three tubs"), Turn::Reached);
        QCOMPARE(talk.fold()->current().goal, lunchTub(2, "opens three tubs"));
        QVERIFY(!inForce(*talk.fold()));
    }

    /// A release that knows another way of ending writes it here: the goal goes on, and is read.
    void anEndOfASortThatIsNotKnownIsNone()
    {
        Talk talk;
        Event &event = talk.turn("morven", lunchTub(), Turn::Reached);
        auto fields = nlohmann::json::parse(event.fields);
        fields["turn"] = "asleep";
        event.fields = fields.dump();
        QVERIFY(inForce(*talk.fold()));
        fields["turn"] = "reached";
        fields["turned"] = "2027-02-30"; // no such day
        event.fields = fields.dump();
        QVERIFY(inForce(*talk.fold()));
    }

    /// What a release before ends of goals reads of one (core/child/goal_events.h has not changed).
    void anOlderReaderReadsTheGoalAndNoEnd()
    {
        Talk talk;
        const Event &event = talk.turn("morven", lunchTub(), Turn::Reached, "done");
        const auto read = child::goalFromFields(event.fields);
        QCOMPARE(read->goal, lunchTub().asChildGoal());
    }

    void aVersionKnowsItsReasonAndWhoWroteItDown()
    {
        Talk talk;
        AgreedGoal after = lunchTub(2, "opens three tubs");
        after.reason = "two were too easy";
        talk.agree("morven", lunchTub());
        talk.meet("ruth");
        talk.agree("ruth", after);
        talk.meet("morven");
        after.weight = 3;
        talk.agree("morven", after).instant.ms -= 300 * msPerDay; // weighed later, by a slow clock
        const auto record = talk.fold();
        QCOMPARE(record->current().author, std::string("ruth"));
        QCOMPARE(record->current().goal.reason, std::string("two were too easy"));
        QCOMPARE(record->versions[0].author, std::string("morven"));
    }

    void aRatingOfWordsThatAreNotThereCountsNothing()
    {
        Talk talk;
        talk.rate("ruth", rated(lunchTub(7), 2, RatedBy::Together, "", 9));
        QVERIFY(!talk.fold());
        talk.agree("morven", lunchTub());
        QVERIFY(talk.fold()->current().ratings.empty());
    }

    void whatMeansNothingIsNotRead_data()
    {
        QTest::addColumn<QByteArray>("key");
        QTest::addColumn<QByteArray>("value");
        QTest::newRow("level 3") << QByteArray("level") << QByteArray("3");
        QTest::newRow("level -3") << QByteArray("level") << QByteArray("-3");
        QTest::newRow("half a level") << QByteArray("level") << QByteArray("0.5");
        QTest::newRow("no such day") << QByteArray("day") << QByteArray("\"2027-02-30\"");
        QTest::newRow("no such role") << QByteArray("role") << QByteArray("\"doctor\"");
        QTest::newRow("nobody") << QByteArray("rater") << QByteArray("\"\"");
        QTest::newRow("no version") << QByteArray("version") << QByteArray("1");
        QTest::newRow("a torn version") << QByteArray("version") << QByteArray("\"1-abc\"");
        QTest::newRow("no goal") << QByteArray("id") << QByteArray("null");
    }
    void whatMeansNothingIsNotRead()
    {
        QFETCH(QByteArray, key);
        QFETCH(QByteArray, value);
        Event event;
        event.kind = Kind::GoalRated;
        event.fields = fieldsOf(rated(lunchTub(), 1, RatedBy::Family, "Ruth", 3));
        QVERIFY(readRating(event));
        auto fields = nlohmann::json::parse(event.fields);
        fields[key.toStdString()] = nlohmann::json::parse(value.toStdString());
        event.fields = fields.dump();
        QVERIFY(!readRating(event));
    }

    void aVersionIsReadBackAndNothingElseIs()
    {
        const VersionKey key = keyOf(lunchTub(3));
        QCOMPARE(versionFromText(toText(key)), std::optional(key));
        for (const char *text : {"", "3", "-0123456789abcdef", "0-0123456789abcdef",
                                 "03-0123456789abcdef", "3-0123456789ABCDEF", "3-0123456789abcde"})
            QVERIFY2(!versionFromText(text), text);
    }

    /// Random talk of three devices: the same record in any order. Source: events.md 1 and 12.
    void anyTalkFoldsTheSameInAnyOrder()
    {
        QVERIFY(rc::check("any order", [] {
            Talk talk;
            const std::vector<std::string> devices{"morven", "ruth", "callum"};
            const int length = *rc::gen::inRange(1, 25);
            for (int i = 0; i < length; ++i) {
                const std::string device = *rc::gen::elementOf(devices);
                const AgreedGoal goal =
                    lunchTub(*rc::gen::inRange(1, 4), *rc::gen::element<std::string>("x", "y"));
                const int what = *rc::gen::inRange(0, 6);
                if (what == 0)
                    talk.meet(device);
                else if (what == 1)
                    talk.agree(device, goal);
                else if (what == 5)
                    talk.turn(device, goal, *rc::gen::element(Turn::Reached, Turn::TakenUp));
                else
                    talk.rate(device, rated(goal, *rc::gen::inRange(-2, 3),
                                            *rc::gen::element(RatedBy::Together, RatedBy::Family),
                                            *rc::gen::elementOf(devices), what));
            }
            (void)talk.fold(); // which looks at many orders
        }));
    }

    /// Each rater's own score, together first; what was not rated is left out.
    void everyRaterHasAScoreOfTheirOwn()
    {
        Talk tub;
        tub.agree("morven", lunchTub());
        tub.rate("ruth", rated(lunchTub(), 2, RatedBy::Family, "Ruth", 30));
        tub.rate("morven", rated(lunchTub(), 1, RatedBy::Together, "", 30));
        AgreedGoal coat = lunchTub();
        coat.id = "coat";
        Talk other;
        other.agree("morven", coat);
        other.rate("ruth", rated(coat, 0, RatedBy::Family, "Ruth", 30));
        const std::vector records{*tub.fold(), *other.fold()};
        const auto scores = raterScores(records);
        QCOMPARE(scores.size(), std::size_t{2});
        QCOMPARE(scores[0].role, RatedBy::Together);
        QCOMPARE(scores[0].rated, 1);
        QCOMPARE(scores[0].goals, 2);
        QCOMPARE(*scores[0].t, 60.0);
        QCOMPARE(scores[1].rater, std::string("Ruth"));
        // Source: development.md d3, two goals, sum +2.
        QVERIFY(std::abs(*scores[1].t - 62.4) <= 0.05);
    }

    /// Source: job.md T12, "goal levels with words"; T10, no number is shown to families.
    void aSummaryIsOfWordsAndHoldsNoLevelsNumber()
    {
        Talk talk;
        talk.agree("morven", lunchTub());
        talk.rate("ruth", rated(lunchTub(), 2, RatedBy::Family, "Ruth", 30));
        talk.rate("morven", rated(lunchTub(), 0, RatedBy::Together, "", 31));
        QStringList lines;
        for (const wording::Sentence &line : wording::goalSummary(*talk.fold()))
            lines.append(QString::fromStdString(wording::fill(line)));
        QCOMPARE(lines, QStringList({"Goal: Opens his lunch tub",
                                     "When these words were agreed, on 4 January: holds it",
                                     "Agreed together on 4 February: lifts the lid",
                                     "Ruth on 3 February: opens a friend's tub too",
                                     "We look at it again on 29 March."}));
    }
    void aSummarySaysWhatIsNotKnown()
    {
        Talk talk;
        talk.agree("morven", lunchTub());
        talk.agree("morven", lunchTub(2, "opens three tubs"));
        QStringList lines;
        for (const wording::Sentence &line : wording::goalSummary(*talk.fold()))
            lines.append(QString::fromStdString(wording::fill(line)));
        QVERIFY(lines.contains("We have not agreed together since then where it stands."));
        QCOMPARE(lines.filter("Its words have been changed").size(), 1);
    }
};

QTEST_APPLESS_MAIN(TestGoalRecord)
#include "tst_goal_record.moc"
