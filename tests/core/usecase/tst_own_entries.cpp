#include <QtTest>

#include "core/store/projector.h"
#include "core/usecase/export_record.h"
#include "core/usecase/family.h"
#include "core/usecase/say_one.h"
#include "core/usecase/set_up_home.h"

#include "tests/support/own_samples.h"

#include <algorithm>

using namespace lidlark;
using namespace lidlark::test;
using catalogue::Tag;
using workbench::OwnSort;

namespace {

const ActivityId road{"own-bobbin-road"};

bool offers(usecase::Workplace &place, const std::string &child, const safety::Room &room = {})
{
    const auto family = usecase::loadFamily(place, child);
    const auto gated = usecase::gatedFor(*family, place.catalogue, room, *dayFrom({2027, 1, 11}));
    return std::ranges::any_of(gated.admitted, [](const safety::Admitted &admitted) {
        return admitted.activity().id == road;
    });
}

bool offers(Phone &phone, const std::string &child, const safety::Room &room = {})
{
    OwnWorkplace own(phone, child);
    return offers(own.place(), child, room);
}

/// Adults alone, beside.
safety::Room alone()
{
    safety::Room room;
    room.present.emplace();
    return room;
}

bool send(Phone &therapist, const std::string &child, OwnSort sort = OwnSort::Activity,
          const std::string &id = road.value)
{
    usecase::Workplace place = therapist.workplace();
    return usecase::sendToBox(place, child, sort, id).ok();
}

/// Whatever a phone of the crew may have put into the box's lane.
void sayToBox(Phone &phone, const std::string &child, OwnSort sort, const std::string &id,
              const std::string &text, int version = 1)
{
    usecase::Workplace place = phone.workplace();
    const auto box = store::BoxRepository(phone.database).boxOf(child);
    (void)usecase::sayOne(place, {journal::LaneKind::Box, box->id.value}, journal::Kind::OwnEntry,
                          workbench::fieldsOf(workbench::OwnSaid{id, sort, text, version}));
}

QString problemsIn(const catalogue::Catalogue &catalogue)
{
    QStringList lines;
    for (const catalogue::Problem &problem : catalogue.problems())
        lines << QString::fromStdString(problem.text());
    return lines.join('\n');
}

std::string replaced(std::string text, const std::string &what, const std::string &with)
{
    const std::size_t at = text.find(what);
    return at == std::string::npos ? std::string() : text.replace(at, what.size(), with);
}

} // namespace

/// Guards a therapist's own things and activities: the same loader, lint and gate as for what is
/// built in (job.md T1, T18; design.md 4), on every phone that has the same events.
class TestOwnEntries : public QObject
{
    Q_OBJECT

    std::unique_ptr<Phone> m_morven;

    std::unique_ptr<Phone> inHome(const char *person, const char *home)
    {
        auto phone = std::make_unique<Phone>(person, store::Role::Parent, home);
        phone->meet(*m_morven);
        return phone;
    }

private slots:
    void init()
    {
        m_morven = therapistWithBobbins({"Fin", "Lewis"});
        m_morven->clock.moveTo(islandTime(11, 9, 0));
    }

    void whatIsWrittenIsReadTheSame()
    {
        std::vector<catalogue::SourceFile> items;
        std::vector<catalogue::SourceFile> activities;
        for (const catalogue::ItemKind &item : realCatalogue().items())
            items.push_back({"items/" + item.id.value + ".yaml", yamlOf(item)});
        for (const catalogue::Activity &activity : realCatalogue().activities())
            activities.push_back({"activities/" + activity.id.value + ".yaml", yamlOf(activity)});
        const auto again = catalogue::load(items, activities);
        QCOMPARE(problemsIn(again), QString());
        for (std::size_t i = 0; i < items.size(); ++i)
            QCOMPARE(yamlOf(again.items()[i]), items[i].text);
        for (std::size_t i = 0; i < activities.size(); ++i)
            QCOMPARE(yamlOf(again.activities()[i]), activities[i].text);
    }

    /// Source: 16 CFR 1501.4 (cylinder 1.25 in across, 1.00 to 2.25 in deep): 28 mm across and
    /// 24 mm long lies inside; 45 mm across does not.
    void sizesDecideWhatIsSmall()
    {
        QVERIFY(bobbins().tags.empty());
        QVERIFY(catalogue::itemDraft({"items/own-bobbins.yaml", yamlOf(bobbins())})
                    .tags.has(Tag::Small));
        QVERIFY(!catalogue::itemDraft({"items/own-bobbins.yaml", yamlOf(bobbins(45, 45))})
                     .tags.has(Tag::Small));
        usecase::Workplace place = m_morven->workplace();
        const std::string without = replaced(yamlOf(bobbins()), "tags: [SMALL]", "tags: []");
        const auto found =
            usecase::findingsIn(place, realCatalogue(), OwnSort::Item, "own-bobbins", without);
        QVERIFY(found && found->refused.size() == 1);
        QCOMPARE(found->refused.front().field, "tags");
    }

    void theGateRunsOnIt()
    {
        usecase::Workplace place = m_morven->workplace();
        QVERIFY(writeOwn(place));
        QVERIFY(send(*m_morven, "Fin") && send(*m_morven, "Lewis"));
        QVERIFY(offers(*m_morven, "Fin"));
        safety::Room visitor;
        visitor.visitorUnderThree = true;
        QVERIFY(!offers(*m_morven, "Fin", visitor));
        QVERIFY(!offers(*m_morven, "Lewis")); // Mirren is 25 months old
        OwnWorkplace own(*m_morven);
        const auto fits =
            usecase::fitOfOwn(own.place(), realCatalogue(), road.value, yamlOf(bobbinRoad()));
        QVERIFY(fits && fits->size() == 2);
        QVERIFY((*fits)[0].child == "Fin" && (*fits)[0].fits && (*fits)[0].inBox);
        QVERIFY(!(*fits)[1].fits);
        QVERIFY(std::ranges::any_of((*fits)[1].reasons, [](const safety::Reason &reason) {
            return reason.tag == Tag::Small && reason.name == "Mirren";
        }));
    }

    void publishingIsRefused_data()
    {
        QTest::addColumn<QString>("what");
        QTest::addColumn<QString>("with");
        QTest::addColumn<QString>("field");
        QTest::newRow("no floor") << "age_floor_months: 36\n"
                                  << ""
                                  << "age_floor_months";
        QTest::newRow("a floor below its tag's") << "months: 36"
                                                 << "months: 24"
                                                 << "age_floor_months";
        QTest::newRow("no tag") << "cautions: [SMALL]"
                                << "cautions: []"
                                << "cautions";
        QTest::newRow("nothing easier") << "easier:\n  - {lever: distance, text: \"Start half way "
                                           "down the hill\"}"
                                        << "easier: []"
                                        << "easier";
        QTest::newRow("nothing harder")
            << "harder:\n  - {lever: speed, text: \"Let it go so slowly "
               "that it stops on the book\"}"
            << "harder: []"
            << "harder";
        QTest::newRow("no put-back") << "put_back: [\"Four bobbins: count them into the bag\", "
                                        "\"Lid on\"]"
                                     << "put_back: []"
                                     << "put_back";
        QTest::newRow("nothing counted") << "Four bobbins: count them"
                                         << "Put them"
                                         << "put_back";
        QTest::newRow("still a draft") << "awaiting-review"
                                       << "draft"
                                       << "status";
    }

    void publishingIsRefused()
    {
        QFETCH(QString, what);
        QFETCH(QString, with);
        QFETCH(QString, field);
        usecase::Workplace place = m_morven->workplace();
        QVERIFY(writeOwn(place));
        const std::string text =
            replaced(yamlOf(bobbinRoad()), what.toStdString(), with.toStdString());
        QVERIFY(!text.empty());
        QVERIFY(usecase::keepOwnActivity(place, road.value, text).ok());
        const auto found = usecase::publishOwnActivity(place, realCatalogue(), road.value);
        QVERIFY(found && !found->clean());
        const auto isThere = [&field](const auto &finding) {
            return finding.field == field.toStdString();
        };
        QVERIFY(std::ranges::any_of(found->refused, isThere) ||
                std::ranges::any_of(found->lint, isThere));
        const auto kept = usecase::ownKept(place, OwnSort::Activity, road.value);
        QVERIFY(kept && *kept && !(*kept)->signedOff && (*kept)->text == text);
        QVERIFY(!send(*m_morven, "Fin"));
    }

    void aFamilyHasItUntilItIsWithdrawn()
    {
        usecase::Workplace place = m_morven->workplace();
        QVERIFY(writeOwn(place));
        auto ruth = inHome("Ruth", "h-fin");
        QVERIFY(OwnWorkplace(*ruth).files().empty());
        QVERIFY(send(*m_morven, "Fin"));
        QVERIFY(!offers(*m_morven, "Lewis", alone())); // not sent to that box
        ruth->meet(*m_morven);
        QVERIFY(offers(*ruth, "Fin"));
        QVERIFY(usecase::withdrawFromBox(place, "Fin", OwnSort::Activity, road.value).ok());
        ruth->meet(*m_morven);
        QVERIFY(!offers(*ruth, "Fin"));
        OwnWorkplace own(*ruth);
        const catalogue::Activity *known = own.catalogue().activity(road);
        QVERIFY(known != nullptr && known->name == "Bobbin Road"); // what was played has a name
        QVERIFY(own.catalogue().item({"own-bobbins"})->tags.has(Tag::Small));
    }

    void aThingStaysWhileItIsPlayedWith()
    {
        usecase::Workplace place = m_morven->workplace();
        QVERIFY(writeOwn(place) && send(*m_morven, "Fin"));
        QVERIFY(!usecase::withdrawFromBox(place, "Fin", OwnSort::Item, "own-bobbins").ok());
        QVERIFY(usecase::withdrawFromBox(place, "Fin", OwnSort::Activity, road.value).ok());
        QVERIFY(usecase::withdrawFromBox(place, "Fin", OwnSort::Item, "own-bobbins").ok());
        usecase::Workplace family = inHome("Ruth", "h-fin")->workplace();
        QVERIFY(!usecase::sendToBox(family, "Fin", OwnSort::Activity, road.value).ok());
    }

    void anotherWordingIsAnotherVersion()
    {
        usecase::Workplace place = m_morven->workplace();
        QVERIFY(writeOwn(place) && send(*m_morven, "Fin"));
        catalogue::Activity again = bobbinRoad();
        again.invite = "Which bobbin takes the longest road today?";
        QVERIFY(usecase::keepOwnActivity(place, road.value, yamlOf(again)).ok());
        QVERIFY(usecase::publishOwnActivity(place, realCatalogue(), road.value)->clean());
        QVERIFY(offers(*m_morven, "Fin")); // as it was sent
        QVERIFY(send(*m_morven, "Fin"));
        OwnWorkplace own(*m_morven);
        QCOMPARE(own.catalogue().activity(road)->version, 2);
        QVERIFY(offers(own.place(), "Fin"));
    }

    void twoPhonesShowTheSame()
    {
        usecase::Workplace place = m_morven->workplace();
        QVERIFY(writeOwn(place) && send(*m_morven, "Fin"));
        auto ruth = inHome("Ruth", "h-fin");
        auto gran = std::make_unique<Phone>("Gran", store::Role::Caregiver, "h-fin");
        gran->meet(*ruth);
        OwnWorkplace one(*ruth);
        OwnWorkplace other(*gran);
        QVERIFY(one.files() == other.files());
        usecase::MenuRequest request;
        request.child = "Fin";
        const auto hers = usecase::suggestToday(one.place(), request);
        const auto theirs = usecase::suggestToday(other.place(), request);
        QVERIFY(hers && theirs);
        QCOMPARE(hers->menu.offers.size(), std::size_t{3});
        for (std::size_t i = 0; i < 3; ++i)
            QCOMPARE(hers->menu.offers[i].admitted.activity().id.value,
                     theirs->menu.offers[i].admitted.activity().id.value);
    }

    void concurrentWordsAreTakenCarefully()
    {
        auto una = std::make_unique<Phone>("Una", store::Role::Therapist, "");
        una->meet(*m_morven);
        catalogue::ItemKind large = bobbins(45, 45);
        large.tags.add(Tag::Edge);
        usecase::Workplace hers = una->workplace();
        catalogue::Activity other = bobbinRoad();
        other.cautions.add(Tag::Edge);
        QVERIFY(writeOwn(hers, large, other) && send(*una, "Fin"));
        usecase::Workplace mine = m_morven->workplace();
        QVERIFY(writeOwn(mine) && send(*m_morven, "Fin"));
        auto ruth = inHome("Ruth", "h-fin");
        ruth->meet(*una);
        auto gran = std::make_unique<Phone>("Gran", store::Role::Caregiver, "h-fin");
        gran->meet(*una); // the other way round
        gran->meet(*m_morven);
        for (Phone *phone : {ruth.get(), gran.get()}) {
            OwnWorkplace own(*phone);
            const auto tags = own.catalogue().item({"own-bobbins"})->tags;
            QVERIFY(tags.has(Tag::Small) && tags.has(Tag::Edge));
            QVERIFY(!offers(own.place(), "Fin"));
            QVERIFY(*store::Projector(phone->database).matchesRefold());
        }
        QVERIFY(OwnWorkplace(*ruth).files() == OwnWorkplace(*gran).files());
        m_morven->meet(*una);
        QVERIFY(usecase::publishOwnActivity(mine, realCatalogue(), road.value)->clean());
        QVERIFY(send(*m_morven, "Fin")); // who has seen both settles it
        gran->meet(*m_morven);
        QVERIFY(offers(*gran, "Fin"));
    }

    void whatIsBuiltInKeepsItsTags()
    {
        usecase::Workplace place = m_morven->workplace();
        catalogue::ItemKind eyes = *realCatalogue().item({"eyes"});
        eyes.tags = {};
        eyes.hazards = {};
        eyes.measures.whole = *measure::solidFrom("sphere", {80});
        const std::string large = yamlOf(eyes);
        QVERIFY(large.find("tags: []") != std::string::npos);
        QVERIFY(usecase::keepOwnItem(place, "eyes", large).ok());
        QVERIFY(usecase::publishOwnItem(place, realCatalogue(), "eyes")->clean());
        QVERIFY(send(*m_morven, "Fin", OwnSort::Item, "eyes"));
        QVERIFY(OwnWorkplace(*m_morven).catalogue().item({"eyes"})->tags.has(Tag::Small));
        QVERIFY(!usecase::keepOwnItem(place, "no-such-thing", large).ok());
        QVERIFY(!usecase::keepOwnActivity(place, "slow-oars", yamlOf(bobbinRoad())).ok());
    }

    void whoIsAffectedIsSaidBefore()
    {
        usecase::Workplace place = m_morven->workplace();
        catalogue::ItemKind lids = *realCatalogue().item({"lids"});
        lids.measures.whole = *measure::solidFrom("disc", {28, 5}); // 16 CFR 1501.4: inside
        const std::string small = yamlOf(lids);
        const auto before = *store::EventRepository(m_morven->database).count();
        const auto affected = usecase::whoIsAffected(place, realCatalogue(),
                                                     {{{"items/lids.yaml", small}}, {}, {}, {}});
        QVERIFY(affected && affected->size() == 2);
        QVERIFY((*affected)[0].affected() && !(*affected)[0].hidden.empty());
        QCOMPARE(*store::EventRepository(m_morven->database).count(), before);
        QVERIFY(usecase::keepOwnItem(place, "lids", small).ok());
        QVERIFY(usecase::publishOwnItem(place, realCatalogue(), "lids")->clean());
        QVERIFY(send(*m_morven, "Fin", OwnSort::Item, "lids"));
        auto ruth = inHome("Ruth", "h-fin");
        OwnWorkplace own(*ruth);
        QVERIFY(own.catalogue().item({"lids"})->tags.has(Tag::Small));
        QCOMPARE(own.catalogue().item({"lids"})->version,
                 realCatalogue().item({"lids"})->version + 1);
        for (const catalogue::Activity &activity : own.catalogue().activities()) {
            const bool used = std::ranges::any_of(
                activity.items, [](const auto &use) { return use.item.value == "lids"; });
            QVERIFY2(!used || activity.cautions.has(Tag::Small), activity.id.value.c_str());
        }
    }

    /// A correction leaves out what does not name its tag: who is small at home is named even so.
    /// Source: 16 CFR 1501.4, 1500.18(a)(9): no small parts for an under-three.
    void whatAThingMeansForEachBox()
    {
        usecase::Workplace place = m_morven->workplace();
        catalogue::ItemKind lids = *realCatalogue().item({"lids"});
        lids.measures.whole = *measure::solidFrom("disc", {28, 5});
        const auto reach = usecase::reachOfOwn(place, realCatalogue(), "lids", yamlOf(lids));
        QVERIFY(reach && reach->size() == 2);
        const usecase::OwnReach &lewis = (*reach)[1];
        QCOMPARE(lewis.gate.child, "Lewis");
        QVERIFY(!lewis.gate.hidden.empty() && !lewis.inBox && lewis.pieces == 4);
        QVERIFY(std::ranges::any_of(lewis.gate.hidden, [](const auto &hidden) {
            return hidden.reasons.empty() &&
                   std::ranges::any_of(hidden.withEveryTag, [](const safety::Reason &reason) {
                       return reason.code == safety::ReasonCode::UnderThreeInRoom &&
                              reason.tag == Tag::Small && reason.name == "Mirren";
                   });
        }));
        QVERIFY(usecase::keepOwnItem(place, "lids", yamlOf(lids)).ok());
        QVERIFY(usecase::publishOwnItem(place, realCatalogue(), "lids")->clean());
        QVERIFY(send(*m_morven, "Lewis", OwnSort::Item, "lids"));
        const auto again = usecase::reachOfOwn(place, realCatalogue(), "lids", yamlOf(lids));
        QVERIFY(again && (*again)[0].gate.affected());
        QVERIFY((*again)[1].inBox && !(*again)[1].gate.affected());
        catalogue::ItemKind latex = bobbins();
        latex.allergens = {"latex"};
        latex.tags = {Tag::Latex};
        const auto own = usecase::reachOfOwn(place, realCatalogue(), "own-bobbins", yamlOf(latex));
        QVERIFY(own && (*own)[0].pieces == 4 && !(*own)[0].avoided);
        QVERIFY(usecase::sayFact(place, {"h-fin"}, {"", "latex", "yes"}).ok());
        const auto avoided =
            usecase::reachOfOwn(place, realCatalogue(), "own-bobbins", yamlOf(latex));
        QVERIFY(avoided && (*avoided)[0].avoided && !(*avoided)[1].avoided);
    }

    void whatNeverGoesIntoABoxIsRefused()
    {
        usecase::Workplace place = m_morven->workplace();
        const std::string unsaid = yamlOf(bobbins(), std::nullopt);
        const std::string magnet = yamlOf(bobbins(), {{catalogue::Banned::Magnet}});
        const catalogue::SourceFile file{"items/own-bobbins.yaml", magnet};
        QVERIFY(catalogue::holdsIn(file) == catalogue::Holds({{catalogue::Banned::Magnet}}));
        for (const std::string &text : {unsaid, magnet}) {
            const auto found =
                usecase::findingsIn(place, realCatalogue(), OwnSort::Item, "own-bobbins", text);
            QVERIFY(found && found->refused.size() == 1);
            QCOMPARE(found->refused.front().field, "holds");
        }
    }

    void hostileTextsAreLeftOut_data()
    {
        QTest::addColumn<QByteArray>("text");
        const QByteArray sound = QByteArray::fromStdString(yamlOf(bobbinRoad()));
        QTest::newRow("no file") << QByteArray("x");
        QTest::newRow("deep") << QByteArray(16000, '[');
        QTest::newRow("deeper") << QByteArray("a: ").repeated(5000);
        QTest::newRow("an anchor") << QByteArray("a: &b [*b, *b]");
        QTest::newRow("a long name")
            << QByteArray(sound).replace("Bobbin Road", QByteArray(2000, 'n'));
        QTest::newRow("a drawing from elsewhere")
            << QByteArray(sound).replace("item-box", "../../../etc/passwd");
        QTest::newRow("another's number")
            << QByteArray(sound).replace("entry: \"own-bobbin-road\"", "entry: A39");
        QTest::newRow("another's id")
            << QByteArray(sound).replace("id: own-bobbin-road", "id: slow-oars");
        QTest::newRow("a banned thing")
            << QByteArray(sound).replace("small hill", "hill of magnets");
    }

    void hostileTextsAreLeftOut()
    {
        QFETCH(QByteArray, text);
        sayToBox(*m_morven, "Fin", OwnSort::Item, "own-bobbins", yamlOf(bobbins()));
        sayToBox(*m_morven, "Fin", OwnSort::Activity, road.value, text.toStdString());
        auto ruth = inHome("Ruth", "h-fin");
        OwnWorkplace own(*ruth);
        QVERIFY(own.catalogue().activity(road) == nullptr);
        QVERIFY(problemsIn(own.catalogue()).startsWith("activities/own-bobbin-road.yaml"));
        QCOMPARE(own.catalogue().activities().size(), realCatalogue().activities().size());
    }

    void aCorrectionThatCannotBeReadIsNotIgnored()
    {
        sayToBox(*m_morven, "Fin", OwnSort::Item, "pegs", "of another age: [");
        auto ruth = inHome("Ruth", "h-fin");
        OwnWorkplace own(*ruth);
        QVERIFY(own.catalogue().item({"pegs"})->tags.has(Tag::Small));
        for (const catalogue::Activity &activity : own.catalogue().activities()) {
            for (const catalogue::ItemUse &use : activity.items)
                QVERIFY2(use.item.value != "pegs", activity.id.value.c_str());
        }
    }

    void aBoxHoldsAHundredAtMost()
    {
        for (int i = 0; i <= 100; ++i)
            sayToBox(*m_morven, "Fin", OwnSort::Activity, "own-" + std::to_string(1000 + i), "x");
        sayToBox(*m_morven, "Fin", OwnSort::Item, "pegs", yamlOf(*realCatalogue().item({"pegs"})));
        OwnWorkplace own(*m_morven);
        QVERIFY(own.files().activities.size() == usecase::mostOwnEntries);
        QVERIFY(own.files().doubtful.contains({"pegs"})); // beyond what is read
        const auto notLookedInto = std::ranges::count_if(
            own.catalogue().problems(), [](const catalogue::Problem &problem) {
                return problem.reason.starts_with("was not looked into");
            });
        QCOMPARE(static_cast<std::size_t>(notLookedInto),
                 usecase::mostOwnEntries - catalogue::mostOwnUnread);
        usecase::Workplace place = m_morven->workplace();
        QVERIFY(writeOwn(place));
        QVERIFY(!send(*m_morven, "Fin"));
        QVERIFY(send(*m_morven, "Lewis"));
    }

    void nothingBesidesPlainTextIsKept()
    {
        usecase::Workplace place = m_morven->workplace();
        QVERIFY(!usecase::keepOwnActivity(place, road.value, "\xff").ok());
        QVERIFY(!usecase::keepOwnActivity(place, road.value, std::string(17000, 'a')).ok());
        QVERIFY(usecase::keepOwnActivity(place, road.value, "half a line").ok()); // a draft
        QVERIFY(usecase::throwAwayOwn(place, OwnSort::Activity, road.value).ok());
        QVERIFY(usecase::ownKept(place)->empty());
    }

    void theOpenCopyHoldsIt()
    {
        usecase::Workplace place = m_morven->workplace();
        QVERIFY(writeOwn(place) && send(*m_morven, "Fin"));
        auto ruth = inHome("Ruth", "h-fin");
        OwnWorkplace own(*ruth);
        const auto record = usecase::openRecord(own.place(), "Fin");
        QVERIFY(record.ok());
        const auto table = std::ranges::find(
            record->tables, std::string("written by the therapist"), &usecase::OpenTable::name);
        QVERIFY(table != record->tables.end() && table->rows.size() == 2);
        QVERIFY(table->rows[1][2] == usecase::Cell("Bobbin Road"));
        QVERIFY(table->rows[1][5] == usecase::Cell("Morven"));
    }
};

QTEST_APPLESS_MAIN(TestOwnEntries)
#include "tst_own_entries.moc"
