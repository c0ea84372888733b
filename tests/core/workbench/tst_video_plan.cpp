#include <QtTest>

#include "core/journal/fields.h"
#include "core/workbench/session_parts.h"

#include "tests/support/phone.h"

#include <random>

using namespace lidlark;
using namespace lidlark::workbench;
using lidlark::test::realCatalogue;

namespace {

const ActivityId dropper{"dropper-constellation"};
const ActivityId crayon{"turnabout-crayon"};
const ActivityId cups{"cup-telegraph"};

/// Scenario 7 of job.md: Monday 25 January 2027, 10:00.
VideoPlan maireadsPlan()
{
    return {"p-1",  {"h-mairead"}, *dayFromText("2027-01-25"), 600, 1, {dropper, crayon},
            {cups}, false};
}

journal::Event eventOf(journal::Kind kind, std::string fields, const std::string &device,
                       std::uint64_t counter)
{
    journal::Event event;
    event.lane = {journal::LaneKind::Box, "b-mairead"};
    event.device = {device};
    event.counter = counter;
    event.instant = {1'800'000'000'000 + static_cast<std::int64_t>(counter), 0};
    event.when = {*dayFromText("2027-01-24"), PartOfDay::Evening};
    event.author = device;
    event.kind = kind;
    event.fields = std::move(fields);
    return event;
}

std::map<ItemId, AtHand> saying(const ItemId &item, bool here)
{
    return {{item, {here, "Peigi", *dayFromText("2027-01-24")}}};
}

} // namespace

/// What a video session plays and needs, on both sides (job.md T14, scenario 7).
class TestVideoPlan : public QObject
{
    Q_OBJECT
private slots:
    void aPlanIsReadAsItWasWritten()
    {
        const VideoPlan plan = maireadsPlan();
        const auto read =
            readVideoPlan(eventOf(journal::Kind::VideoPlan, fieldsOf(plan), "d-morven", 1));
        QVERIFY(read);
        QVERIFY(*read == plan);
    }

    void aPlanAstrayIsNone_data()
    {
        QTest::addColumn<QString>("fields");
        const auto row = [](const char *name, auto change) {
            nlohmann::json fields = nlohmann::json::parse(fieldsOf(maireadsPlan()));
            change(fields);
            QTest::newRow(name) << QString::fromStdString(fields.dump());
        };
        row("no id", [](auto &fields) { fields.erase("plan"); });
        row("no activity", [](auto &fields) { fields["activities"] = nlohmann::json::array(); });
        row("one twice", [](auto &fields) { fields["activities"] = {"a", "a"}; });
        row("four", [](auto &fields) { fields["activities"] = {"a", "b", "c", "d"}; });
        row("three spares", [](auto &fields) { fields["spares"] = {"a", "b", "c"}; });
        row("no such day", [](auto &fields) { fields["day"] = "2027-02-30"; });
        row("no such time", [](auto &fields) { fields["minute"] = 1440; });
        row("a number as an activity", [](auto &fields) { fields["activities"] = {7}; });
    }
    void aPlanAstrayIsNone()
    {
        QFETCH(QString, fields);
        QVERIFY(
            !readVideoPlan(eventOf(journal::Kind::VideoPlan, fields.toStdString(), "d-morven", 1)));
    }

    void whatIsSaidLastOfAThingHolds()
    {
        std::vector<journal::Event> events{
            eventOf(journal::Kind::HaveReady, fieldsOfAtHand("p-1", {"dropper"}, true), "d-peigi",
                    1),
            eventOf(journal::Kind::HaveReady, fieldsOfAtHand("p-1", {"crayons"}, true), "d-peigi",
                    2),
            eventOf(journal::Kind::HaveReady, fieldsOfAtHand("p-1", {"dropper"}, false), "d-peigi",
                    3)};
        std::mt19937 random(7);
        for (int order = 0; order < 6; ++order) {
            std::shuffle(events.begin(), events.end(), random);
            const auto said = foldAtHand(events, journal::Seen({}));
            QCOMPARE(said.size(), std::size_t{2});
            QVERIFY(!said.at({"dropper"}).here && said.at({"crayons"}).here);
        }
    }

    /// "The plan had offered the spare when 'dropper: not here' was ticked."
    void theSparePlaysWhereAThingIsMissing()
    {
        const VideoPlan plan = maireadsPlan();
        const UsesOf uses = usesAsWritten(plan, realCatalogue());
        QCOMPARE(uses.size(), std::size_t{3});
        for (const SessionPart &part : partsNow(plan, uses, {}))
            QVERIFY(part.played == part.planned && part.missing.empty());
        const auto parts = partsNow(plan, uses, saying({"dropper"}, false));
        QCOMPARE(parts.size(), std::size_t{2});
        QVERIFY(parts[0].played == cups);
        QCOMPARE(parts[0].missing, std::vector<ItemId>{{"dropper"}});
        QVERIFY(parts[1].played == crayon);
        // It turns up after all.
        QVERIFY(partsNow(plan, uses, saying({"dropper"}, true))[0].played == dropper);
    }

    void oneSpareFillsOnePlace()
    {
        const VideoPlan plan = maireadsPlan();
        const UsesOf uses = usesAsWritten(plan, realCatalogue());
        auto said = saying({"dropper"}, false);
        said.merge(saying({"crayons"}, false));
        const auto parts = partsNow(plan, uses, said);
        QVERIFY(parts[0].played == cups);
        QVERIFY(!parts[1].played);
        // And a spare that lacks something fills none.
        for (const catalogue::ItemUse &use : uses.at(cups))
            said[use.item] = {false, "Peigi", {}};
        QVERIFY(!partsNow(plan, uses, said)[0].played);
    }

    void everyThingIsNamedOnce()
    {
        const VideoPlan plan = maireadsPlan();
        const auto things = thingsNeeded(plan, usesAsWritten(plan, realCatalogue()), {});
        std::set<ItemId> items;
        bool home = false;
        for (const ThingNeeded &thing : things) {
            QVERIFY(items.insert(thing.item).second);
            QVERIFY(thing.pieces > 0);
            home = home || thing.source == catalogue::Source::Home;
            QCOMPARE(thing.source == catalogue::Source::Home, home); // the box's own come first
        }
        QVERIFY(items.contains({"dropper"}) && items.contains({"crayons"}));
    }

    void partsFollowOneAnother()
    {
        const std::vector<int> minutes{7, 8, 6};
        QCOMPARE(beginningsOf(minutes), (std::vector<int>{3, 10, 18}));
        QVERIFY(beginningsOf({}).empty());
    }
};

QTEST_APPLESS_MAIN(TestVideoPlan)
#include "tst_video_plan.moc"
