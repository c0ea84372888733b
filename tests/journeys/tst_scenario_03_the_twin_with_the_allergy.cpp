#include <QtTest>

#include "core/usecase/keep_box.h"
#include "core/usecase/set_up_home.h"
#include "core/usecase/suggest_today.h"
#include "core/usecase/take_out.h"
#include "core/wording/emergency_words.h"
#include "core/wording/reason_words.h"

#include "tests/support/phone.h"

using namespace lidlark;
using namespace lidlark::test;

/// job.md scenario 3: Anya has the box, her twin Bartek the allergy, found late.
class TestScenario03 : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<Phone> m_morven;
    std::unique_ptr<Phone> m_marta;
    std::unique_ptr<Phone> m_piotr;

    static usecase::TodayMenu menuOf(Phone &phone)
    {
        usecase::MenuRequest request;
        request.child = "Anya";
        usecase::Workplace workplace = phone.workplace();
        auto today = usecase::suggestToday(workplace, request);
        if (!today)
            qFatal("%s", today.error().detail.c_str());
        return *std::move(today);
    }

    static QStringList takenOut(Phone &phone)
    {
        usecase::Workplace workplace = phone.workplace();
        QStringList items;
        for (const auto &line :
             usecase::takeOutOf(*usecase::loadFamily(workplace, "Anya"), realCatalogue()))
            items.append(QString::fromStdString(line.item.value));
        return items;
    }

    void martaSaysBartekHasIt()
    {
        usecase::Workplace workplace = m_marta->workplace();
        QVERIFY(usecase::sayFact(workplace, {"h-anya"}, {"p-bartek", "latex", "yes"}).ok());
    }

    static bool offersLatex(const usecase::TodayMenu &today)
    {
        return std::any_of(today.gated.admitted.begin(), today.gated.admitted.end(),
                           [](const safety::Admitted &admitted) {
                               return admitted.cautions().has(catalogue::Tag::Latex);
                           });
    }

private slots:
    void init()
    {
        m_morven = therapistWith({"Anya"});
        m_marta = std::make_unique<Phone>("Marta", store::Role::Parent, "h-anya");
        m_piotr = std::make_unique<Phone>("Piotr", store::Role::Parent, "h-anya");
        for (Phone *phone : {m_marta.get(), m_piotr.get()}) {
            phone->clock.moveTo(islandTime(13, 18, 0)); // Wednesday
            QVERIFY(phone->meet(*m_morven) > 0);
        }
    }

    void beforeItLatexIsOffered()
    {
        QVERIFY(offersLatex(menuOf(*m_marta)));
        QVERIFY(takenOut(*m_marta).isEmpty());
    }

    void atOnceAllOfLatexIsToGoAndNothingOfItIsOffered()
    {
        martaSaysBartekHasIt();
        QCOMPARE(takenOut(*m_marta), (QStringList{"ball", "balloon", "bands"}));
        QVERIFY(!offersLatex(menuOf(*m_marta)));
    }

    void theSwapsAreNamed()
    {
        martaSaysBartekHasIt();
        usecase::Workplace workplace = m_marta->workplace();
        QStringList swaps;
        for (const auto &line :
             usecase::takeOutOf(*usecase::loadFamily(workplace, "Anya"), realCatalogue()))
            swaps.append(QString::fromStdString(line.instead->value));
        QCOMPARE(swaps, (QStringList{"pouch", "scarf", "loops"}));
    }

    /// "The resistance band stays (latex-free) and says so; the dropper stays only if recorded as
    /// one-piece."
    void theBandAndTheDropperStayAndSayWhy()
    {
        martaSaysBartekHasIt();
        const QStringList out = takenOut(*m_marta);
        const auto care = [](const char *item) {
            QString text;
            for (const std::string &line : realCatalogue().item({item})->care)
                text += QString::fromStdString(line);
            return text;
        };
        QVERIFY(!out.contains("rband") && care("rband").contains("latex-free only"));
        QVERIFY(!out.contains("dropper") && care("dropper").contains("in one piece"));
    }

    void theOtherPhoneOfTheHomeAndTheTherapistLearnIt()
    {
        martaSaysBartekHasIt();
        QVERIFY(m_piotr->meet(*m_marta) > 0);
        QVERIFY(!offersLatex(menuOf(*m_piotr)));
        QCOMPARE(takenOut(*m_piotr), takenOut(*m_marta));
        QVERIFY(m_morven->meet(*m_marta) > 0);
        usecase::Workplace workplace = m_morven->workplace();
        const auto sheet = usecase::loadFamily(workplace, "Anya")->sheet;
        QVERIFY(sheet.has_value());
        QVERIFY(sheet->avoidances.latex == child::Answer::Yes);
    }

    /// "The gate cannot be overridden for allergy by anyone": a later no of somebody else changes
    /// nothing while the yes stands (events.md 8).
    void nobodyElseTakesItBack()
    {
        martaSaysBartekHasIt();
        QVERIFY(m_piotr->meet(*m_marta) > 0);
        usecase::Workplace workplace = m_piotr->workplace();
        QVERIFY(usecase::sayFact(workplace, {"h-anya"}, {"p-bartek", "latex", "no"}).ok());
        QVERIFY(usecase::sayFact(workplace, {"h-anya"}, {"", "latex", "no"}).ok());
        QVERIFY(!offersLatex(menuOf(*m_piotr)));
        QVERIFY(!takenOut(*m_piotr).isEmpty());
    }

    void whatACountSaysIsGoneIsOffTheList()
    {
        martaSaysBartekHasIt();
        usecase::Workplace workplace = m_marta->workplace();
        QVERIFY(
            usecase::countBox(workplace, "Anya", "Marta", {{{"bands"}, 0}, {{"ball"}, 0}}).ok());
        QCOMPARE(takenOut(*m_marta), QStringList{"balloon"});
        QVERIFY(!offersLatex(menuOf(*m_marta)));
    }

    void theEmergencyLineIsGeneric()
    {
        const auto lines = wording::emergencyLines(wording::Emergency::Reaction, {});
        QCOMPARE(wording::fill(lines.front()),
                 std::string("Trouble breathing, swelling, fainting: emergency number now."));
    }
};

QTEST_APPLESS_MAIN(TestScenario03)
#include "tst_scenario_03_the_twin_with_the_allergy.moc"
