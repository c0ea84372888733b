#include <QtTest>

#include "core/usecase/items_around.h"
#include "core/usecase/set_up_home.h"

#include "tests/support/phone.h"

#include <algorithm>

using namespace lidlark;
using namespace lidlark::test;
using usecase::ItemPlace;
using usecase::ItemStanding;

namespace {

bool saysCode(const ItemStanding &standing, safety::ReasonCode code)
{
    return std::ranges::any_of(
        standing.heldBack, [code](const safety::Reason &reason) { return reason.code == code; });
}

} // namespace

/// Guards what a search for a thing tells (job.md F2: what is held back shows its reason): where it
/// is, and why nothing may be played with it.
class TestItemsAround : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<Phone> m_phone;
    std::unique_ptr<Phone> m_morven;
    std::optional<usecase::Family> m_family;
    safety::Gated m_gated;

    void open(const std::string &child, const std::string &person, const std::string &home)
    {
        m_morven = therapistWith({child});
        m_phone = std::make_unique<Phone>(person, store::Role::Parent, home);
        m_phone->meet(*m_morven);
        look(child);
    }
    void look(const std::string &child)
    {
        usecase::Workplace workplace = m_phone->workplace();
        m_family = *usecase::loadFamily(workplace, child);
        m_gated = usecase::gatedFor(*m_family, realCatalogue(), {}, *dayFrom({2027, 1, 11}));
    }
    [[nodiscard]] ItemStanding standing(const char *item) const
    {
        for (const ItemStanding &one : usecase::itemsAround(*m_family, realCatalogue(), m_gated)) {
            if (one.kind->id.value == item)
                return one;
        }
        return {};
    }

private slots:
    void inTheBoxAndNotInTheBox()
    {
        open("Fin", "Ruth", "h-fin");
        const ItemStanding eyes = standing("eyes");
        QVERIFY(eyes.place == ItemPlace::InBox);
        QCOMPARE(eyes.low, 6);
        QCOMPARE(eyes.high, 6);
        QVERIFY(eyes.fits > 0);
        QVERIFY(eyes.heldBack.empty());
        const catalogue::ItemKind *bands = realCatalogue().item({"bands"});
        QVERIFY(bands != nullptr && bands->swap);
        QVERIFY(standing(bands->swap->with.value.c_str()).place == ItemPlace::NotInBox);
    }

    void fromTheHouse()
    {
        open("Fin", "Ruth", "h-fin");
        const auto &items = realCatalogue().items();
        const auto extra = std::ranges::find_if(items, [](const catalogue::ItemKind &kind) {
            return kind.source == catalogue::Source::Home;
        });
        QVERIFY(extra != items.end());
        QVERIFY(standing(extra->id.value.c_str()).place == ItemPlace::AtHome);
        m_family->sheet->missingExtras.push_back(extra->id);
        QVERIFY(standing(extra->id.value.c_str()).place == ItemPlace::NotAtHome);
    }

    /// Mirren is two: nothing small while she may be here, and the eyes say so (scenario 5).
    void heldBackForASmallChild()
    {
        open("Lewis", "Catriona", "h-lewis");
        const ItemStanding eyes = standing("eyes");
        QVERIFY(eyes.place == ItemPlace::InBox);
        QCOMPARE(eyes.fits, 0);
        QVERIFY(saysCode(eyes, safety::ReasonCode::UnderThreeInRoom));
    }

    /// Latex in the home: balloons say why, pegs stay (scenario 3).
    void heldBackForLatex()
    {
        open("Anya", "Marta", "h-anya");
        QVERIFY(standing("balloon").fits > 0);
        usecase::Workplace workplace = m_phone->workplace();
        QVERIFY(usecase::sayFact(workplace, {"h-anya"}, {"", "latex", "yes"}).ok());
        look("Anya");
        QCOMPARE(standing("balloon").fits, 0);
        QVERIFY(saysCode(standing("balloon"), safety::ReasonCode::LatexInHome));
        QVERIFY(standing("pegs").fits > 0);
        QVERIFY(standing("pegs").heldBack.empty());
    }

    /// For every thing of the catalogue: what may be played with it is what the gate has admitted.
    void whatFitsIsWhatTheGateAdmits()
    {
        open("Lewis", "Catriona", "h-lewis");
        const auto all = usecase::itemsAround(*m_family, realCatalogue(), m_gated);
        QCOMPARE(all.size(), realCatalogue().items().size());
        for (const ItemStanding &one : all) {
            int admitted = 0;
            for (const safety::Admitted &activity : m_gated.admitted) {
                for (const catalogue::ItemUse &use : activity.items())
                    admitted += use.item == one.kind->id ? 1 : 0;
            }
            QVERIFY2((one.fits == 0) == (admitted == 0), one.kind->name.c_str());
            QVERIFY2(one.fits == 0 || one.heldBack.empty(), one.kind->name.c_str());
        }
    }
};

QTEST_APPLESS_MAIN(TestItemsAround)
#include "tst_items_around.moc"
