#include <QtTest>

#include "core/usecase/box_items.h"
#include "core/usecase/tend_item.h"

#include "tests/support/phone.h"

using namespace lidlark;
using namespace lidlark::test;

/// Guards what is looked over before a play: activities.md 1.3, "check softness weekly", "check
/// monthly".
class TestToLookOver : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<Phone> m_ruth;

    std::vector<std::string> looks(const char *activity, int january)
    {
        m_ruth->clock.moveTo(islandTime(january, 18, 0));
        usecase::Workplace workplace = m_ruth->workplace();
        const auto family = usecase::loadFamily(workplace, "Fin");
        const catalogue::Activity &entry = *realCatalogue().activity({activity});
        std::vector<std::string> ids;
        for (const auto *kind : usecase::toLookOver(*family, realCatalogue(), entry.items,
                                                    *dayFrom({2027, 1, january})))
            ids.push_back(kind->id.value);
        return ids;
    }

private slots:
    void init()
    {
        auto morven = therapistWith({"Fin"});
        m_ruth = std::make_unique<Phone>("Ruth", store::Role::Parent, "h-fin");
        QVERIFY(m_ruth->meet(*morven) > 0);
    }

    void doughIsFeltOnceAWeek()
    {
        QVERIFY(looks("crumb-counter", 10).empty()); // handed over on the 4th
        QCOMPARE(looks("crumb-counter", 11), std::vector<std::string>{"dough"});
        usecase::Workplace workplace = m_ruth->workplace();
        QVERIFY(usecase::noteChecked(workplace, {"Fin", {}, {"dough"}}).ok());
        QVERIFY(looks("crumb-counter", 17).empty());
        QCOMPARE(looks("crumb-counter", 18), std::vector<std::string>{"dough"});
    }

    void theBallIsLookedAtBeforeEveryUse()
    {
        QCOMPARE(looks("squeeze-porter", 5), std::vector<std::string>{"ball"});
    }

    /// Its caution says so every time (safety.md RB-01; core/wording/tag_words.cpp).
    void theBandIsLeftToItsCaution() { QVERIFY(looks("slow-oars", 5).empty()); }
};

QTEST_APPLESS_MAIN(TestToLookOver)
#include "tst_to_look_over.moc"
