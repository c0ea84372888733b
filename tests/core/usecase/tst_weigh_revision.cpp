#include <QtTest>

#include "core/store/event_repository.h"
#include "core/usecase/restock.h"
#include "core/usecase/revise_box.h"
#include "core/usecase/set_up_home.h"
#include "core/usecase/weigh_revision.h"

#include "tests/support/phone.h"

#include <algorithm>

using namespace lidlark;
using namespace lidlark::test;

/// Guards what is said of a new lid list before it is sent (job.md T9, T3, scenario 7).
class TestWeighRevision : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<Phone> m_morven;

    [[nodiscard]] usecase::RevisionWeighed weigh(const std::string &child,
                                                 const std::map<ItemId, int> &packed)
    {
        usecase::Workplace workplace = m_morven->workplace();
        const auto family = usecase::loadFamily(workplace, child);
        const auto weighed = usecase::weighRevision(workplace, *family, packed);
        return weighed ? *weighed : usecase::RevisionWeighed{};
    }
    [[nodiscard]] std::set<ActivityId> playable(const std::string &child)
    {
        usecase::Workplace workplace = m_morven->workplace();
        usecase::MenuRequest request;
        request.child = child;
        const auto menu = usecase::suggestToday(workplace, request);
        std::set<ActivityId> entries;
        for (const safety::Admitted &admitted : menu->gated.admitted)
            entries.insert(admitted.activity().id);
        return entries;
    }
    static bool has(const std::vector<ActivityId> &list, const ActivityId &id)
    {
        return std::ranges::find(list, id) != list.end();
    }
    static std::map<ItemId, int> without(std::initializer_list<const char *> items)
    {
        auto packed = usecase::island::standardBox();
        for (const char *item : items)
            packed.erase({item});
        return packed;
    }

private slots:
    void init()
    {
        m_morven = therapistWith({"Mairead", "Anya"});
        m_morven->clock.moveTo(islandTime(25, 10, 0));
    }

    void theListAsItIsDoesNothing()
    {
        QVERIFY(weigh("Mairead", usecase::island::standardBox()) == usecase::RevisionWeighed{});
    }

    void weighingWritesNothing()
    {
        const auto before = *store::EventRepository(m_morven->database).count();
        (void)weigh("Mairead", without({"bands"}));
        QCOMPARE(*store::EventRepository(m_morven->database).count(), before);
    }

    void whatIsLeftOutIsTakenOutAndWhatIsAddedIsSent()
    {
        auto packed = without({"bands", "balloon"});
        packed[{"loops"}] = 6;
        packed[{"pegs"}] += 2;
        const usecase::RevisionWeighed weighed = weigh("Mairead", packed);
        QVERIFY(weighed.takeOut ==
                (std::vector<usecase::Pieces>{{{"balloon"}, 3}, {{"bands"}, 6}}));
        QVERIFY(weighed.onTheWay == (std::vector<usecase::Pieces>{{{"loops"}, 6}, {{"pegs"}, 2}}));
        QVERIFY(weighed.avoided.empty());
    }

    /// What was said before it was sent is what then happens: with the gate itself as the judge.
    void whatIsSaidToGoIsGoneOnceItIsSent()
    {
        auto packed = without({"bands", "balloon"});
        packed[{"loops"}] = 6;
        const auto before = playable("Mairead");
        const usecase::RevisionWeighed weighed = weigh("Mairead", packed);
        QVERIFY(!weighed.goes.empty() || !weighed.waits.empty());
        usecase::Workplace workplace = m_morven->workplace();
        QVERIFY(usecase::reviseBox(workplace, "Mairead", {}, packed).ok());
        const auto sent = playable("Mairead");
        for (const ActivityId &activity : before) {
            const bool hidden = has(weighed.goes, activity) || has(weighed.waits, activity);
            QVERIFY2(sent.contains(activity) != hidden, activity.value.c_str());
        }
        QVERIFY(usecase::countIn(workplace, "Mairead", {}, {"loops"}, 6).ok());
        const auto come = playable("Mairead");
        for (const ActivityId &activity : before)
            QVERIFY2(come.contains(activity) != has(weighed.goes, activity),
                     activity.value.c_str());
    }

    /// The gate cannot be overridden for an allergy by anyone (scenario 3, T3).
    void whatAHomeMustAvoidIsRefusedByNameAndChangesNothing()
    {
        usecase::Workplace workplace = m_morven->workplace();
        auto packed = without({"bands", "balloon"});
        QVERIFY(usecase::reviseBox(workplace, "Anya", {}, packed).ok());
        QVERIFY(usecase::sayFact(workplace, {"h-anya"}, {"", "latex", "yes"}).ok());
        packed[{"balloon"}] = 3;
        QVERIFY(weigh("Anya", packed).avoided == std::vector<ItemId>{{"balloon"}});
        const Outcome refused = usecase::reviseBox(workplace, "Anya", {}, packed);
        QVERIFY(!refused.ok());
        QVERIFY(refused.error().code == ErrorCode::NotAllowed);
        QVERIFY(refused.error().detail.starts_with("balloon"));
        QCOMPARE(usecase::loadFamily(workplace, "Anya")->revision->revision.number, 2);
    }

    void wordsThatAreTooLongAreRefused()
    {
        usecase::Workplace workplace = m_morven->workplace();
        const Outcome refused =
            usecase::reviseBox(workplace, "Mairead", {}, without({"bands"}), std::string(601, 'a'));
        QVERIFY(!refused.ok() && refused.error().code == ErrorCode::Invalid);
        QVERIFY(
            usecase::reviseBox(workplace, "Mairead", {}, without({"bands"}), std::string(600, 'a'))
                .ok());
    }
};

QTEST_APPLESS_MAIN(TestWeighRevision)
#include "tst_weigh_revision.moc"
