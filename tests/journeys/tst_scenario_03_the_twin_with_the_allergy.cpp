#include <QtTest>

#include "core/store/event_repository.h"
#include "core/store/projector.h"
#include "core/store/recording.h"
#include "core/usecase/keep_box.h"
#include "core/usecase/say_statement.h"
#include "core/usecase/take_out.h"
#include "core/wording/day_words.h"
#include "core/wording/take_out_words.h"

#include "tests/support/phone.h"

#include <set>

using namespace lidlark;
using namespace lidlark::test;
using usecase::TakeOut;
using usecase::TakeOutThing;

namespace {

std::set<std::string> namesOf(const TakeOut &takeOut)
{
    std::set<std::string> names;
    for (const TakeOutThing &thing : takeOut.things)
        names.insert(thing.item.value);
    return names;
}

} // namespace

/// job.md scenario 3: the twin with the allergy.
class TestScenario03 : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<Phone> m_morven;
    std::unique_ptr<Phone> m_marta;
    std::unique_ptr<Phone> m_piotr;

    usecase::Family familyOn(Phone &phone)
    {
        usecase::Workplace workplace = phone.workplace();
        return *usecase::loadFamily(workplace, "Anya");
    }
    std::vector<TakeOut> takeOutsOn(Phone &phone)
    {
        usecase::Workplace workplace = phone.workplace();
        return *usecase::takeOutsOf(workplace, familyOn(phone));
    }
    void say(Phone &phone, const char *person, const char *fact, const char *value)
    {
        usecase::Workplace workplace = phone.workplace();
        QVERIFY(usecase::sayStatement(workplace, {"h-anya"}, {person, fact, value}).ok());
    }
    void martaSaysBartekLatex() { say(*m_marta, "p-bartek", "latex", "yes"); }
    Outcome confirm(Phone &phone, const char *item)
    {
        usecase::Workplace workplace = phone.workplace();
        return usecase::confirmTakenOut(workplace, "Anya", {}, {item});
    }
    usecase::TodayMenu menuOn(Phone &phone)
    {
        usecase::Workplace workplace = phone.workplace();
        usecase::MenuRequest request;
        request.child = "Anya";
        request.room.present.emplace(); // Bartek is not even in the room
        return *usecase::suggestToday(workplace, request);
    }
    int requestsOn(Phone &phone)
    {
        int requests = 0;
        const auto events = store::EventRepository(phone.database).all();
        for (const journal::Event &event : *events)
            requests += event.kind == journal::Kind::Request ? 1 : 0;
        return requests;
    }

private slots:
    void init()
    {
        m_morven = therapistWith({"Anya"});
        m_marta = std::make_unique<Phone>("Marta", store::Role::Parent, "h-anya");
        m_piotr = std::make_unique<Phone>("Piotr", store::Role::Parent, "h-anya");
        for (Phone *phone : {m_marta.get(), m_piotr.get()}) {
            phone->clock.moveTo(islandTime(13, 18, 25)); // Wednesday
            QVERIFY(phone->meet(*m_morven) > 0);
        }
        QVERIFY(takeOutsOn(*m_marta).empty());
    }

    /// At once, offline: rubber bands, slit ball, balloons, each with a picture.
    void threeThingsAreToBeTakenOutEachWithAPicture()
    {
        martaSaysBartekLatex();
        const auto takeOuts = takeOutsOn(*m_marta);
        QCOMPARE(takeOuts.size(), std::size_t{1});
        QVERIFY((namesOf(takeOuts.front()) == std::set<std::string>{"ball", "balloon", "bands"}));
        QVERIFY(!takeOuts.front().isDone());
        for (const TakeOutThing &thing : takeOuts.front().things) {
            QVERIFY(!realCatalogue().item(thing.item)->drawing.empty());
            QVERIFY(!thing.out);
        }
    }

    /// Of the child who plays, of the twin, of the home: it is the house that must be free of it.
    void aYesOfAnybodyClearsTheHouse_data()
    {
        QTest::addColumn<QByteArray>("person");
        QTest::newRow("the twin") << QByteArray("p-bartek");
        QTest::newRow("the playing child") << QByteArray("c-anya");
        QTest::newRow("the home") << QByteArray("");
    }
    void aYesOfAnybodyClearsTheHouse()
    {
        QFETCH(QByteArray, person);
        say(*m_marta, person.constData(), "latex", "yes");
        QCOMPARE(takeOutsOn(*m_marta).front().things.size(), std::size_t{3});
        for (const safety::Admitted &admitted : menuOn(*m_marta).gated.admitted)
            QVERIFY2(!admitted.cautions().has(catalogue::Tag::Latex),
                     admitted.activity().id.value.c_str());
    }

    void everyDeviceOfThatHomeSeesTheSame()
    {
        martaSaysBartekLatex();
        QVERIFY(m_piotr->meet(*m_marta) > 0);
        const auto takeOuts = takeOutsOn(*m_piotr);
        QCOMPARE(takeOuts.size(), std::size_t{1});
        QVERIFY((namesOf(takeOuts.front()) == std::set<std::string>{"ball", "balloon", "bands"}));
        for (const safety::Admitted &admitted : menuOn(*m_piotr).gated.admitted)
            QVERIFY(!admitted.cautions().has(catalogue::Tag::Latex));
        QVERIFY(!menuOn(*m_piotr).menu.offers.empty());
    }

    void theSwapsAppearAsAskedForOnce()
    {
        martaSaysBartekLatex();
        QVERIFY(m_piotr->meet(*m_marta) > 0);
        say(*m_piotr, "", "latex", "yes"); // the other parent says it too
        QCOMPARE(requestsOn(*m_piotr), 3);
        std::set<std::string> asked;
        const auto takeOuts = takeOutsOn(*m_piotr);
        for (const TakeOutThing &thing : takeOuts.front().things) {
            QVERIFY(thing.asked);
            asked.insert(thing.swap->value);
        }
        QVERIFY((asked == std::set<std::string>{"loops", "pouch", "scarf"}));
    }

    /// One note, with time and author, also after a second yes.
    void theTherapistSeesOneNoteWithTimeAndAuthor()
    {
        martaSaysBartekLatex();
        m_piotr->clock.moveTo(islandTime(13, 21, 0));
        QVERIFY(m_piotr->meet(*m_marta) > 0);
        say(*m_piotr, "", "latex", "yes");
        m_morven->clock.moveTo(islandTime(14, 9, 0));
        QVERIFY(m_morven->meet(*m_piotr) > 0);
        const auto takeOuts = takeOutsOn(*m_morven);
        QCOMPARE(takeOuts.size(), std::size_t{1});
        const usecase::SafetyNote &note = takeOuts.front().note;
        QCOMPARE(note.author, std::string("Marta"));
        QCOMPARE(note.person, std::string("Bartek"));
        QVERIFY(note.when.day == *dayFrom({2027, 1, 13}));
        QCOMPARE(note.minuteOfDay, 18 * 60 + 25);
        QCOMPARE(wording::fill(wording::saidBy(note.author, note.person,
                                               wording::weekdayWord(*dayFrom({2027, 1, 13})),
                                               note.minuteOfDay)),
                 std::string("Marta said so of Bartek: Wednesday, 18:25."));
    }

    /// The long band stays (latex-free), the dropper as a one-piece: their own care lines say so.
    void theLongBandAndTheOnePieceDropperStayAndSayWhy()
    {
        martaSaysBartekLatex();
        const auto takeOuts = takeOutsOn(*m_marta);
        std::set<std::string> stays;
        for (const ItemId &item : takeOuts.front().stays)
            stays.insert(item.value);
        QVERIFY((stays == std::set<std::string>{"dropper", "rband"}));
        const auto says = [](const char *item, const char *words) {
            const catalogue::ItemKind *kind = realCatalogue().item({item});
            return std::any_of(
                kind->care.begin(), kind->care.end(),
                [words](const std::string &line) { return line.find(words) != std::string::npos; });
        };
        QVERIFY(says("rband", "latex-free"));
        QVERIFY(says("dropper", "in one piece"));
        const auto today = menuOn(*m_marta);
        QVERIFY(std::any_of(
            today.gated.admitted.begin(), today.gated.admitted.end(),
            [](const auto &admitted) { return admitted.activity().id.value == "slow-oars"; }));
    }

    void whatIsConfirmedIsOutOnEveryPhoneWithItsAuthor()
    {
        martaSaysBartekLatex();
        QVERIFY(m_piotr->meet(*m_marta) > 0);
        QVERIFY(confirm(*m_piotr, "bands").ok());
        QVERIFY(confirm(*m_piotr, "balloon").ok());
        QVERIFY(confirm(*m_piotr, "ball").ok());
        QVERIFY(m_marta->meet(*m_piotr) > 0);
        QVERIFY(m_morven->meet(*m_piotr) > 0);
        for (Phone *phone : {m_marta.get(), m_piotr.get(), m_morven.get()}) {
            const auto takeOuts = takeOutsOn(*phone);
            QVERIFY(takeOuts.front().isDone());
            QCOMPARE(takeOuts.front().things.size(), std::size_t{3});
            for (const TakeOutThing &thing : takeOuts.front().things)
                QCOMPARE(thing.outBy, std::string("Piotr"));
            QCOMPARE(itemOf(*phone, "Anya", "balloon").high, 0);
            QVERIFY(familyOn(*phone).losses.empty()); // taken out is not lost
            QVERIFY(*store::Projector(phone->database).matchesRefold());
        }
    }

    /// Said twice, from two phones that had not met: one fact.
    void confirmingTwiceIsOneFact()
    {
        martaSaysBartekLatex();
        QVERIFY(m_piotr->meet(*m_marta) > 0);
        QVERIFY(confirm(*m_marta, "bands").ok());
        QVERIFY(confirm(*m_piotr, "bands").ok());
        (void)m_marta->meet(*m_piotr);
        (void)m_piotr->meet(*m_marta);
        for (Phone *phone : {m_marta.get(), m_piotr.get()}) {
            QCOMPARE(itemOf(*phone, "Anya", "bands").high, 0);
            QVERIFY(familyOn(*phone).losses.empty());
        }
    }

    /// A late find puts the band back on the list: it has to leave the house as well.
    void aBandFoundLaterIsOnTheListAgain()
    {
        martaSaysBartekLatex();
        QVERIFY(confirm(*m_marta, "bands").ok());
        usecase::Workplace workplace = m_marta->workplace();
        QVERIFY(usecase::noteFound(workplace, "Anya", "Marta", {"bands"}, 1).ok());
        const auto takeOuts = takeOutsOn(*m_marta);
        for (const TakeOutThing &thing : takeOuts.front().things) {
            if (thing.item.value == "bands") {
                QVERIFY(!thing.out);
                QCOMPARE(thing.pieces, 1);
            }
        }
    }

    void onlyWhatMustLeaveCanBeConfirmed()
    {
        QVERIFY(!confirm(*m_marta, "bands").ok()); // nobody has to avoid anything
        martaSaysBartekLatex();
        QVERIFY(!confirm(*m_marta, "rband").ok());
        QVERIFY(!confirm(*m_marta, "no-such-thing").ok());
    }

    /// "The gate cannot be overridden for allergy by anyone": the other parent's no, a therapist's
    /// permission and taking everything out leave it as it is.
    void nobodyOverridesIt()
    {
        martaSaysBartekLatex();
        QVERIFY(m_piotr->meet(*m_marta) > 0);
        say(*m_piotr, "p-bartek", "latex", "no");
        say(*m_piotr, "", "latex", "no");
        QVERIFY(m_morven->meet(*m_piotr) > 0);
        for (const char *name : {"latex", "balloon", "small-when-away"}) {
            store::Recording recording =
                *store::Recording::begin(m_morven->database, m_morven->device, m_morven->clock);
            QVERIFY(recording
                        .say({journal::LaneKind::Safety, "h-anya"}, journal::Kind::Permission,
                             child::fieldsOf(child::Permission{name, "yes"}, true))
                        .ok());
            QVERIFY(recording.commit().ok());
        }
        QVERIFY(m_piotr->meet(*m_morven) > 0);
        for (Phone *phone : {m_piotr.get(), m_morven.get()}) {
            QCOMPARE(takeOutsOn(*phone).size(), std::size_t{1});
            for (const safety::Admitted &admitted : menuOn(*phone).gated.admitted)
                QVERIFY(!admitted.cautions().has(catalogue::Tag::Latex));
        }
    }

    /// Who made the slip can correct it; what was counted in again is in the box.
    void martaCanCorrectHerOwnSlip()
    {
        martaSaysBartekLatex();
        say(*m_marta, "p-bartek", "latex", "no");
        QVERIFY(takeOutsOn(*m_marta).empty());
    }

    /// The same for wheat: the dough goes, the wheat-free dough is asked for.
    void wheatTakesTheDoughOut_data()
    {
        QTest::addColumn<QByteArray>("fact");
        QTest::newRow("wheat allergy") << QByteArray("wheat");
        QTest::newRow("coeliac disease") << QByteArray("coeliac");
    }
    void wheatTakesTheDoughOut()
    {
        QFETCH(QByteArray, fact);
        say(*m_marta, "", fact.constData(), "yes");
        const auto takeOuts = takeOutsOn(*m_marta);
        QCOMPARE(takeOuts.size(), std::size_t{1});
        QVERIFY(takeOuts.front().note.what == child::Avoided::Wheat);
        QVERIFY((namesOf(takeOuts.front()) == std::set<std::string>{"dough"}));
        QCOMPARE(takeOuts.front().things.front().swap->value, std::string("ricedough"));
        QVERIFY(takeOuts.front().things.front().asked);
    }

    /// "Label for the next print carries "latex-free home" in words": on the phone that prints it.
    void theLabelSaysItInWords()
    {
        const auto labelOn = [](Phone &phone) {
            usecase::Workplace workplace = phone.workplace();
            const auto family = usecase::loadFamily(workplace, "Anya");
            QStringList label;
            for (const wording::Sentence &line : wording::homeLabel(family->sheet->avoidances))
                label.append(QString::fromStdString(wording::fill(line)));
            return label;
        };
        QCOMPARE(labelOn(*m_morven), QStringList());
        martaSaysBartekLatex();
        QVERIFY(m_morven->meet(*m_marta) > 0);
        QCOMPARE(labelOn(*m_morven), QStringList{"latex-free home"});
    }

    void theWordsAreGeneric()
    {
        QCOMPARE(wording::fill(wording::emergencyLine()),
                 std::string("Trouble breathing, swelling, fainting: emergency number now."));
        QCOMPARE(wording::fill(wording::takeThemOut(child::Avoided::Latex)),
                 std::string("Take these out of the house, then wash hands."));
        QVERIFY(wording::fill(wording::freeHome(child::Avoided::Latex)).find("latex-free home") !=
                std::string::npos);
    }
};

QTEST_APPLESS_MAIN(TestScenario03)
#include "tst_scenario_03_the_twin_with_the_allergy.moc"
