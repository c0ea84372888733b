#include <QtTest>

#include "core/box/box_code.h"
#include "core/usecase/keep_box.h"
#include "core/usecase/label_page.h"
#include "core/usecase/lid_list_page.h"
#include "core/usecase/restock.h"
#include "core/usecase/restock_page.h"
#include "core/usecase/revise_box.h"
#include "core/usecase/say_statement.h"
#include "core/usecase/summary_page.h"
#include "core/usecase/tally_page.h"
#include "core/usecase/travel_page.h"
#include "tests/support/phone.h"

#include <algorithm>
#include <set>

using namespace lidlark;
using namespace lidlark::test;

/// Guards what stands on the prints, as values (job.md T5, T6, T12, T13, F7, A9).
class TestPrintPages : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<Phone> m_morven;

    static usecase::Family load(Phone &phone, const std::string &child)
    {
        usecase::Workplace workplace = phone.workplace();
        auto family = usecase::loadFamily(workplace, child);
        if (!family)
            qFatal("%s", family.error().detail.c_str());
        return *std::move(family);
    }
    static std::map<ItemId, int> onPaper(const usecase::LidListPage &list)
    {
        std::map<ItemId, int> pieces;
        for (const usecase::LidLine &line : list.lines) {
            for (const usecase::LidPart &part : line.parts)
                pieces[part.item] += part.pieces;
        }
        return pieces;
    }

private slots:
    void init()
    {
        m_morven = therapistWith({"Fin", "Rory", "Anya", "Nuala", "Effie"});
        m_morven->clock.moveTo(islandTime(11, 18, 10));
    }

    /// job.md T5: at most 14 lines. The standard box holds 15 kinds (job.md 2.8): card and lace
    /// stand on one line.
    void theLidListIsTheListInForceOnFourteenLines()
    {
        const auto list = usecase::lidListPageOf(load(*m_morven, "Fin"), realCatalogue(), {});
        QVERIFY(list.ok());
        QCOMPARE(list->revision, 1);
        QVERIFY(list->issued == usecase::island::issueDay());
        QVERIFY(onPaper(*list) == familyOf("Fin").packed);
        QCOMPARE(list->lines.size(), std::size_t{14});
        QCOMPARE(list->cards().size(), std::size_t{1});
    }

    /// What was used up is still on the lid list: it says what belongs in the box.
    void whatIsGoneStaysOnTheList()
    {
        usecase::Workplace workplace = m_morven->workplace();
        QVERIFY(usecase::countBox(workplace, "Fin", {}, {{{"eyes"}, 2}}).ok());
        const auto list = usecase::lidListPageOf(load(*m_morven, "Fin"), realCatalogue(), {});
        QCOMPARE(onPaper(*list).at({"eyes"}), 6);
    }

    /// job.md scenario 7: bands and balloons out, loops and a scarf in; the print is revision 2.
    void aNewRevisionPrintsAsItself()
    {
        usecase::Workplace workplace = m_morven->workplace();
        auto packed = familyOf("Fin").packed;
        packed.erase({"bands"});
        packed.erase({"balloon"});
        packed[{"loops"}] = 6;
        packed[{"scarf"}] = 1;
        QVERIFY(usecase::reviseBox(workplace, "Fin", {}, packed).ok());
        const auto list = usecase::lidListPageOf(load(*m_morven, "Fin"), realCatalogue(), {});
        QCOMPARE(list->revision, 2);
        QVERIFY(list->issued == usecase::island::dayOne());
        QVERIFY(onPaper(*list) == packed);
    }

    void moreThanFourteenLinesGoOnASecondCard()
    {
        usecase::LidListPage list;
        list.lines.resize(29);
        const auto cards = list.cards();
        QCOMPARE(cards.size(), std::size_t{3});
        QVERIFY(std::ranges::all_of(cards, [](const auto &card) { return card.size() <= 14; }));
    }

    /// job.md scenario 3: "latex-free home" from Bartek's allergy, though Anya has the box.
    void aLabelSaysWhatAHomeAvoidsAndNotWhose()
    {
        usecase::Workplace workplace = m_morven->workplace();
        const auto before = usecase::labelPageOf(workplace, load(*m_morven, "Anya"));
        QVERIFY(before.ok() && before->avoided.empty());
        QVERIFY(usecase::sayStatement(workplace, {"h-anya"}, {"p-bartek", "latex", "yes"}).ok());
        const auto label = usecase::labelPageOf(workplace, load(*m_morven, "Anya"));
        QVERIFY(label->avoided == std::set<child::Avoided>{child::Avoided::Latex});
        QCOMPARE(label->name, std::string("Anya"));
        // What must leave that house is not asked back by its lid (scenario 3: bands, slit ball,
        // balloons; the long band stays).
        const auto list =
            usecase::lidListPageOf(load(*m_morven, "Anya"), realCatalogue(), label->avoided);
        QVERIFY((list->keptOut == std::vector<ItemId>{{"bands"}, {"balloon"}, {"ball"}}));
        const auto packed = onPaper(*list);
        QVERIFY(!packed.contains({"bands"}) && !packed.contains({"balloon"}) &&
                !packed.contains({"ball"}));
        QVERIFY(packed.contains({"rband"}));
    }

    void aSecondWordOfTheAliasIsNotOnTheLabel()
    {
        usecase::Workplace workplace = m_morven->workplace();
        usecase::Family family = load(*m_morven, "Fin");
        family.box.alias = "Fin MacAllan";
        QCOMPARE(usecase::labelPageOf(workplace, family)->name, std::string("Fin"));
    }

    void theContactIsOneLineAndTheTherapists()
    {
        usecase::Workplace workplace = m_morven->workplace();
        QVERIFY(usecase::setServiceContact(workplace, "  Therapy team, 01234 567890 ").ok());
        QCOMPARE(*usecase::serviceContact(workplace), std::string("Therapy team, 01234 567890"));
        QVERIFY(!usecase::setServiceContact(workplace, std::string(61, 'x')).ok());
        QVERIFY(!usecase::setServiceContact(workplace, "two\nlines").ok());
        QVERIFY(!usecase::setServiceContact(workplace, "\xff").ok());
        QCOMPARE(*usecase::serviceContact(workplace), std::string("Therapy team, 01234 567890"));
        Phone ruth("Ruth", store::Role::Parent, "h-fin");
        usecase::Workplace parents = ruth.workplace();
        QVERIFY(!usecase::setServiceContact(parents, "anything").ok());
    }

    void aBoxIsCalledTheSameEverywhereAndTellsNobody()
    {
        QCOMPARE(box::boxCode({"b-fin"}), box::boxCode({"b-fin"}));
        std::set<std::string> codes;
        for (const usecase::island::Family &family : usecase::island::families())
            codes.insert(box::boxCode({"b-" + usecase::demoId(family.child)}));
        QCOMPARE(codes.size(), usecase::island::families().size());
        const QRegularExpression form(
            QStringLiteral("^[0-9A-HJKMNP-TV-Z]{2}-[0-9A-HJKMNP-TV-Z]{2}$"));
        for (const std::string &code : codes)
            QVERIFY(form.match(QString::fromStdString(code)).hasMatch());
    }

    /// job.md F7: 15 or more, nothing of the box, and through the gate with everyone there;
    /// scenario 9: quiet first.
    void theTravelListNeedsNothingAndIsGated()
    {
        const auto page = usecase::travelPageOf(load(*m_morven, "Fin"), realCatalogue(),
                                                usecase::island::dayOne());
        QVERIFY2(page.entries.size() >= 15, qPrintable(QString::number(page.entries.size())));
        bool loud = false;
        for (const safety::Admitted &entry : page.entries) {
            QVERIFY(entry.activity().noBox && !entry.activity().usesBox());
            const bool quiet = entry.activity().sound == catalogue::Sound::Quiet &&
                               !entry.cautions().has(catalogue::Tag::Noise);
            QVERIFY(!(loud && quiet));
            loud = loud || !quiet;
        }
        // The dad's home has a baby of 9 months: what she must not meet is not on the paper.
        usecase::Family effies = load(*m_morven, "Effie");
        store::HomeRepository homes(m_morven->database);
        effies.home = {"h-effie-dad"};
        effies.sheet = *homes.sheet(effies.home);
        const auto atDads =
            usecase::travelPageOf(effies, realCatalogue(), usecase::island::dayOne());
        for (const safety::Admitted &entry : atDads.entries)
            QVERIFY(!entry.cautions().has(catalogue::Tag::Small) &&
                    !entry.cautions().has(catalogue::Tag::Coin));
    }

    /// 11 January 2027 is a Monday (job.md 4).
    void aTallyIsOfAWholeWeekAndOfNoDay()
    {
        const Day monday = usecase::island::dayOne();
        for (int day = 0; day < 7; ++day)
            QVERIFY(usecase::mondayOf(monday + day) == monday);
        QVERIFY(usecase::mondayOf(*dayFrom({1969, 12, 31})) == *dayFrom({1969, 12, 29}));
        const usecase::Family fin = load(*m_morven, "Fin");
        const auto tally = usecase::tallyPageOf(fin, realCatalogue(), {}, monday + 3, 1);
        QVERIFY(tally.ok());
        QVERIFY(tally->monday == monday + 7);
        QCOMPARE(tally->revision, 1);
        QCOMPARE(tally->lines.size(), familyOf("Fin").packed.size());
        QVERIFY(tally->smallPieces);
        for (const usecase::TallyLine &line : tally->lines)
            QCOMPARE(line.mayDryOut, line.part.item == ItemId{"dough"});
    }

    /// Source: job.md T12 and 2.3: what was played only where the family says so.
    void theSummaryTellsPlaysOnlyWhenAsked()
    {
        usecase::Family fin = load(*m_morven, "Fin");
        const Day today = usecase::island::dayOne();
        fin.plays = {
            {{"p1"},
             fin.child.id,
             {"slow-oars"},
             1,
             "Ruth",
             {today},
             {},
             play::Ending::Stopped,
             {},
             {play::Phrase::AskedAgain}},
            {{"p2"},
             fin.child.id,
             {"slow-oars"},
             1,
             "Gran",
             {today - 1},
             {},
             {},
             {},
             {play::Phrase::AskedAgain, play::Phrase::NeededHelp}},
            {{"p3"}, fin.child.id, {"crumb-counter"}, 1, "Gran", {today - 90}, {}, {}, {}, {}}};
        const auto kept = usecase::summaryPageOf(fin, realCatalogue(), today, false);
        QVERIFY(!kept.playsTold && kept.played.empty());
        const auto told = usecase::summaryPageOf(fin, realCatalogue(), today, true);
        QCOMPARE(told.played.size(), std::size_t{1}); // each once, and nothing from before
        QVERIFY((told.played.front() ==
                 usecase::PlayedActivity{{"slow-oars"},
                                         {play::Phrase::AskedAgain, play::Phrase::NeededHelp}}));
        QCOMPARE(told.goals.size(), std::size_t{1});
    }

    void theSummarySaysHowTheBoxIs()
    {
        usecase::Workplace workplace = m_morven->workplace();
        const Day today = usecase::island::dayOne();
        const auto before =
            usecase::summaryPageOf(load(*m_morven, "Fin"), realCatalogue(), today, false);
        QVERIFY(before.box.isComplete());
        QVERIFY(!before.box.wholeCounted);
        QVERIFY(usecase::countBox(workplace, "Fin", {}, {{{"eyes"}, 2}, {{"straw"}, 0}}).ok());
        QVERIFY(usecase::askFor(workplace, "Fin", {}, {"straw"}).ok());
        const auto after =
            usecase::summaryPageOf(load(*m_morven, "Fin"), realCatalogue(), today, false);
        QVERIFY(after.box.low == std::vector<ItemId>{{"eyes"}});
        QVERIFY(after.box.none == std::vector<ItemId>{{"straw"}});
        QVERIFY(after.box.asked == std::vector<ItemId>{{"straw"}});
    }

    /// job.md T13: grouped by item; what is on its way is no longer to be packed.
    void aRoundIsByItemAndThenByBox()
    {
        usecase::Workplace workplace = m_morven->workplace();
        QVERIFY(usecase::restockPageOf(workplace)->items.empty());
        for (const char *child : {"Rory", "Fin", "Nuala"})
            QVERIFY(usecase::askFor(workplace, child, {}, {"dough"}).ok());
        QVERIFY(usecase::countBox(workplace, "Fin", {}, {{{"eyes"}, 2}}).ok());
        QVERIFY(usecase::askFor(workplace, "Fin", {}, {"eyes"}).ok());
        QVERIFY(usecase::moveRequest(workplace, "Nuala", {}, {"dough"}, box::RequestStep::OnItsWay)
                    .ok());
        const auto page = usecase::restockPageOf(workplace);
        QVERIFY(page.ok());
        QCOMPARE(page->items.size(), std::size_t{2});
        QCOMPARE(page->items[0].item.value, std::string("eyes"));
        QCOMPARE(page->items[0].pieces(), 4);
        QCOMPARE(page->items[1].item.value, std::string("dough"));
        QCOMPARE(page->items[1].boxes.size(), std::size_t{2});
        QCOMPARE(page->items[1].boxes[0].child, std::string("Fin"));
        QCOMPARE(page->boxes(), 2);
        Phone ruth("Ruth", store::Role::Parent, "h-fin");
        usecase::Workplace parents = ruth.workplace();
        QVERIFY(!usecase::restockPageOf(parents).ok());
    }
};

QTEST_APPLESS_MAIN(TestPrintPages)
#include "tst_print_pages.moc"
