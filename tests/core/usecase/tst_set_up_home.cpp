#include <QtTest>

#include "core/box/box_events.h"
#include "core/box/request.h"
#include "core/store/event_repository.h"
#include "core/store/home_repository.h"
#include "core/usecase/issue_box.h"
#include "core/usecase/keep_box.h"
#include "core/usecase/keep_build.h"
#include "core/usecase/play_activity.h"
#include "core/usecase/set_up_clinic.h"
#include "core/usecase/set_up_home.h"
#include "core/usecase/suggest_today.h"
#include "core/usecase/take_out.h"

#include "tests/support/clinic.h"

using namespace lidlark;
using namespace lidlark::test;

namespace {

/// A phone nobody has set up.
struct NewPhone {
    store::Database database = *store::Database::open(":memory:");
    StillClock clock{islandTime(11, 18, 0)};
    SeededEntropy entropy{"new phone"};
    usecase::Workplace workplace{database, realCatalogue(), clock, entropy, {}};
};

usecase::FirstAnswers answers()
{
    usecase::FirstAnswers said;
    said.childAlias = "Ailsa";
    said.age = child::ageFromBirthMonth(2021, 3);
    said.adultAlias = "Ishbel";
    said.latex = child::Answer::No;
    said.wheat = child::Answer::No;
    said.lidList = usecase::island::standardBox();
    return said;
}

std::size_t offersAfter(const usecase::FirstAnswers &said)
{
    NewPhone phone;
    const auto device = usecase::setUpHome(phone.workplace, said);
    if (!device)
        return 99;
    phone.workplace.device = *device;
    usecase::MenuRequest request;
    request.child = said.childAlias;
    const auto today = usecase::suggestToday(phone.workplace, request);
    return today ? today->menu.offers.size() : 98;
}

} // namespace

/// Guards the first run: three questions, no account, and a menu at once.
class TestSetUpHome : public QObject
{
    Q_OBJECT

private slots:
    void aBrandNewHomeGetsThree() { QCOMPARE(offersAfter(answers()), std::size_t{3}); }

    /// activities.md 2.1.1: unknown age, only floor 18 without a hard tag.
    void anUnknownAgeStillGetsThree()
    {
        auto said = answers();
        said.age.reset();
        QCOMPARE(offersAfter(said), std::size_t{3});
    }

    void openAllergyQuestionsStillGetThree()
    {
        auto said = answers();
        said.latex = child::Answer::Unanswered;
        QCOMPARE(offersAfter(said), std::size_t{3});
    }

    void anEmptyBoxStillGetsThree()
    {
        auto said = answers();
        said.lidList.clear();
        QCOMPARE(offersAfter(said), std::size_t{3});
    }

    /// What must not come into the home is asked for in another form from the first day on.
    void aYesAtSetUpAsksForWhatStandsIn()
    {
        auto said = answers();
        said.latex = child::Answer::Yes;
        NewPhone phone;
        phone.workplace.device = *usecase::setUpHome(phone.workplace, said);
        const auto family = usecase::loadFamily(phone.workplace, "Ailsa");
        const journal::Lane lane{journal::LaneKind::Box, family->box.id.value};
        const auto askedFor = [&](const char *item) {
            const auto events = store::EventRepository(phone.database)
                                    .ofSubject({lane, std::string("item:") + item});
            return !box::foldRequests(*events).empty();
        };
        QVERIFY(askedFor("scarf") && askedFor("loops") && askedFor("pouch"));
        QVERIFY(!askedFor("ricedough"));
        const auto takeOuts = usecase::takeOutsOf(phone.workplace, *family);
        QCOMPARE(takeOuts->size(), std::size_t{1});
        for (const usecase::TakeOutThing &thing : takeOuts->front().things)
            QVERIFY2(thing.asked, thing.item.value.c_str());
    }

    /// Who packs boxes begins with a name alone; a family's phone does not become theirs.
    void aTherapistBeginsWithANameAlone()
    {
        NewPhone phone;
        QCOMPARE(usecase::setUpClinic(phone.workplace, "  ").error().detail,
                 std::string("your name: empty"));
        QVERIFY(!store::DeviceRepository(phone.database).device()->has_value());
        const auto device = usecase::setUpClinic(phone.workplace, " Morag ");
        QVERIFY(device.ok());
        const auto kept = store::DeviceRepository(phone.database).device();
        QCOMPARE((*kept)->person, std::string("Morag"));
        QVERIFY((*kept)->role == store::Role::Therapist && (*kept)->home.empty());
        phone.workplace.device = *device;
        QVERIFY(usecase::startBuild(phone.workplace,
                                    {{}, "Spring boxes", usecase::island::dayOne(), "GBP", 10, {}})
                    .ok());
        NewPhone family;
        family.workplace.device = *usecase::setUpHome(family.workplace, answers());
        QVERIFY(!usecase::setUpClinic(family.workplace, "Morag").ok());
    }

    /// A box that a therapist handed over says nothing of a home: its own phone does, once, of the
    /// very child whose box it is; what must stay away is asked to be swapped.
    void aHomeIsToldByWhoCameInByACode()
    {
        auto morven = packer("Morven");
        usecase::Workplace hers = morven->workplace();
        const Table table = tableOn(*morven);
        QVERIFY(usecase::keepBox(hers, table.build, standardBox("K1", "Oona", table.design)).ok());
        QVERIFY(packAll(*morven, table, "K1"));
        QVERIFY(usecase::issuePackedBox(hers, table.build, "K1").ok());
        Phone archie("Archie", store::Role::Parent, "h-archie");
        archie.clock.moveTo(islandTime(5, 18, 0));
        usecase::Workplace his = archie.workplace();
        QVERIFY(usecase::takeEventsFrom(morven->database, his, [](const journal::Lane &lane) {
                    return lane.kind == journal::LaneKind::Box;
                }).ok());
        QVERIFY(*usecase::isHomeToBeTold(his, "Oona"));
        QVERIFY(!*usecase::isHomeToBeTold(hers, "Oona"));
        usecase::FirstAnswers said;
        said.age = child::ageFromBirthMonth(2021, 3);
        said.latex = child::Answer::Yes;
        QVERIFY(usecase::tellHome(his, "Oona", said).ok());
        QVERIFY(!*usecase::isHomeToBeTold(his, "Oona"));
        const auto box = store::BoxRepository(archie.database).boxOf("Oona");
        const auto sheet = store::HomeRepository(archie.database).sheet({"h-archie"});
        QVERIFY(sheet.ok() && sheet->has_value());
        const auto born =
            store::HomeRepository(archie.database).fact({"h-archie"}, box->child.value, "born-by");
        QCOMPARE(**born, std::string("2021-03-31"));
        const auto asked = store::EventRepository(archie.database)
                               .ofSubject({{journal::LaneKind::Box, box->id.value}, "item:loops"});
        QVERIFY(!box::foldRequests(*asked).empty()); // for the bands of the small design
        QVERIFY(rowsMatch(archie));
    }

    /// A contradictory answer is refused with its field named, and nothing is written.
    void whatContradictsTheSheetIsRefused()
    {
        NewPhone phone;
        phone.workplace.device = *usecase::setUpHome(phone.workplace, answers());
        const auto family = usecase::loadFamily(phone.workplace, "Ailsa");
        const std::string ailsa = family->child.id.value;
        QVERIFY(usecase::sayFact(phone.workplace, family->home, {ailsa, "pica", "yes"}).ok());
        const auto before = *store::EventRepository(phone.database).count();
        const Outcome done =
            usecase::sayFact(phone.workplace, family->home, {ailsa, "mouths", "no"});
        QVERIFY(!done.ok());
        QVERIFY2(done.error().detail.starts_with("mouths: "), done.error().detail.c_str());
        QCOMPARE(*store::EventRepository(phone.database).count(), before);
        const auto after = usecase::loadFamily(phone.workplace, "Ailsa");
        const auto &people = after->sheet->people;
        QCOMPARE(std::count_if(people.begin(), people.end(),
                               [](const child::Person &person) { return person.pica; }),
                 1);
    }

    void aSmallBrotherIsInTheRoomUntilSomebodySaysOtherwise()
    {
        auto said = answers();
        said.otherChildren.push_back(
            {"Euan", child::ageFromMonths(20, *dayFrom({2027, 1, 11})), child::Answer::Unanswered});
        NewPhone phone;
        phone.workplace.device = *usecase::setUpHome(phone.workplace, said);
        usecase::MenuRequest request;
        request.child = "Ailsa";
        const auto today = usecase::suggestToday(phone.workplace, request);
        QVERIFY(today.ok());
        for (const safety::Admitted &admitted : today->gated.admitted)
            QVERIFY(!admitted.cautions().has(catalogue::Tag::Small));
    }

    void aNameIsNeeded()
    {
        NewPhone phone;
        auto said = answers();
        said.childAlias.clear();
        const auto device = usecase::setUpHome(phone.workplace, said);
        QVERIFY(!device.ok());
        QCOMPARE(device.error().code, ErrorCode::Invalid);
        QVERIFY(store::BoxRepository(phone.database).boxes()->empty());
    }

    void aBirthInTheFutureIsRefused()
    {
        NewPhone phone;
        auto said = answers();
        said.age = child::ageFromBirthMonth(2027, 6);
        const auto device = usecase::setUpHome(phone.workplace, said);
        QVERIFY(!device.ok());
        QCOMPARE(device.error().code, ErrorCode::BeforeBirth);
    }

    void aMenuForADayBeforeBirthIsRefused()
    {
        NewPhone phone;
        phone.workplace.device = *usecase::setUpHome(phone.workplace, answers());
        usecase::MenuRequest request;
        request.child = "Ailsa";
        request.day = dayFrom({2020, 1, 1});
        const auto today = usecase::suggestToday(phone.workplace, request);
        QVERIFY(!today.ok());
        QCOMPARE(today.error().code, ErrorCode::BeforeBirth);
    }

    void countsThatCannotBeAreRefusedAndChangeNothing_data()
    {
        QTest::addColumn<QByteArray>("item");
        QTest::addColumn<int>("count");
        QTest::newRow("a thousand eyes") << QByteArray("eyes") << 1000;
        QTest::newRow("below zero") << QByteArray("eyes") << -1;
        QTest::newRow("a thing this box does not have") << QByteArray("anvils") << 1;
    }

    void countsThatCannotBeAreRefusedAndChangeNothing()
    {
        QFETCH(QByteArray, item);
        QFETCH(int, count);
        NewPhone phone;
        phone.workplace.device = *usecase::setUpHome(phone.workplace, answers());
        const auto before = *store::EventRepository(phone.database).count();
        QVERIFY(!usecase::countBox(phone.workplace, "Ailsa", {},
                                   {{{"pegs"}, 5}, {{item.toStdString()}, count}})
                     .ok());
        QCOMPARE(*store::EventRepository(phone.database).count(), before);
    }

    void moreThanTheBoxHeldIsAskedAgain()
    {
        NewPhone phone;
        phone.workplace.device = *usecase::setUpHome(phone.workplace, answers());
        const auto play = usecase::startPlay(
            phone.workplace, {"Ailsa", {"hidden-harbour-lights"}, {}, std::nullopt});
        const Outcome done =
            usecase::putBack(phone.workplace, *play, {}, {{{"eyes"}, box::ExceptionKind::Lost, 7}});
        QVERIFY(!done.ok());
        QCOMPARE(done.error().code, ErrorCode::Invalid);
        QVERIFY(!store::HomeRepository(phone.database).play(*play)->value().ending.has_value());
    }

    void anExceptionIsTakenBackWithZero()
    {
        NewPhone phone;
        phone.workplace.device = *usecase::setUpHome(phone.workplace, answers());
        const auto play = usecase::startPlay(
            phone.workplace, {"Ailsa", {"hidden-harbour-lights"}, {}, std::nullopt});
        QVERIFY(
            usecase::putBack(phone.workplace, *play, {}, {{{"eyes"}, box::ExceptionKind::Lost, 1}})
                .ok());
        QVERIFY(
            usecase::putBack(phone.workplace, *play, {}, {{{"eyes"}, box::ExceptionKind::Lost, 0}})
                .ok());
        const auto family = usecase::loadFamily(phone.workplace, "Ailsa");
        QVERIFY(family->losses.empty());
        QCOMPARE(*family->plays.front().ending, play::Ending::AllBack);
    }
};

QTEST_APPLESS_MAIN(TestSetUpHome)
#include "tst_set_up_home.moc"
