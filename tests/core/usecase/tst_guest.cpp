#include <QtTest>

#include "core/store/rights.h"
#include "core/usecase/check_in.h"
#include "core/usecase/keep_box.h"
#include "core/usecase/play_activity.h"
#include "core/usecase/restock.h"
#include "core/usecase/suggest_today.h"
#include "core/usecase/tend_item.h"

#include "tests/support/phone.h"

using namespace lidlark;
using namespace lidlark::test;

/// A guest plays and puts back for the days of the invitation, and no longer (job.md G7, events.md
/// 4); what was noted before stays.
class TestGuest : public QObject
{
    Q_OBJECT

    const std::string m_child = "Skye";
    const ItemId m_crayons{"crayons"};
    std::unique_ptr<Phone> m_morven;
    std::unique_ptr<Phone> m_grandad;

    [[nodiscard]] int left() const
    {
        usecase::Workplace workplace = m_grandad->workplace();
        const auto family = usecase::loadFamily(workplace, m_child);
        for (const store::ItemRow &row : family->items) {
            if (row.item == m_crayons)
                return row.low;
        }
        return -1;
    }
    [[nodiscard]] Outcome breakOne() const
    {
        usecase::Workplace workplace = m_grandad->workplace();
        return usecase::noteGone(workplace, {m_child, {}, m_crayons}, box::ExceptionKind::Broken, 1,
                                 {});
    }

private slots:
    void init()
    {
        m_morven = therapistWith({m_child});
        m_grandad = std::make_unique<Phone>("Grandad", store::Role::Guest, "h-skye");
        m_grandad->device.until = dayFrom({2027, 1, 17});
        m_grandad->meet(*m_morven);
    }

    void playsAndPutsBackInHisOwnName()
    {
        usecase::Workplace workplace = m_grandad->workplace();
        const auto play = usecase::startPlay(workplace, {m_child, {"two-hand-tides"}, {}, {}});
        QVERIFY(play.ok());
        QVERIFY(
            usecase::putBack(workplace, *play, {}, {{m_crayons, box::ExceptionKind::Broken, 1}}, {})
                .ok());
        QCOMPARE(left(), 3);
    }

    void whatIsTheFamilysToSayIsRefusedAndChangesNothing()
    {
        usecase::Workplace workplace = m_grandad->workplace();
        const auto before = store::EventRepository(m_grandad->database).count();
        const Outcome counted = usecase::countBox(workplace, m_child, {}, {{m_crayons, 2}});
        const Outcome asked = usecase::askFor(workplace, m_child, {}, m_crayons);
        const Outcome placed = usecase::sayPlace(workplace, m_child, "h-skye", "here");
        for (const Outcome &outcome : {counted, asked, placed}) {
            QVERIFY(!outcome);
            QCOMPARE(outcome.error().code, ErrorCode::NotAllowed);
        }
        QCOMPARE(*store::EventRepository(m_grandad->database).count(), *before);
        QCOMPARE(left(), 4);
    }

    void aKiteColoursTheMenuAndIsNotWritten()
    {
        usecase::Workplace workplace = m_grandad->workplace();
        const auto before = store::EventRepository(m_grandad->database).count();
        QVERIFY(
            usecase::checkIn(workplace, m_child, checkin::Kite::Resting, checkin::ShownBy::Child)
                .ok());
        QCOMPARE(*store::EventRepository(m_grandad->database).count(), *before);
    }

    void theLastDayCountsAndTheNextOneDoesNot()
    {
        m_grandad->clock.moveTo(islandTime(17, 20, 0));
        QVERIFY(breakOne().ok());
        QCOMPARE(left(), 3);
        m_grandad->clock.moveTo(islandTime(18, 9, 0));
        const Outcome late = breakOne();
        QVERIFY(!late);
        QCOMPARE(late.error().code, ErrorCode::AccessEnded);
        QCOMPARE(late.error().detail, std::string("2027-01-17"));
        QCOMPARE(left(), 3); // what he noted stays
    }

    void theWeekIsKeptWithThePhone()
    {
        QVERIFY(store::DeviceRepository(m_grandad->database).setDevice(m_grandad->device).ok());
        const auto kept = store::DeviceRepository(m_grandad->database).device();
        QVERIFY(kept.ok() && kept->has_value());
        QVERIFY((*kept)->until == dayFrom({2027, 1, 17}));
    }

    void onlyGuestsHaveALastDay()
    {
        store::Device parent{{"d-lorna"}, "Lorna", store::Role::Parent, {"h-skye"}};
        parent.until = dayFrom({2027, 1, 1});
        QVERIFY(!store::accessEnded(parent, *dayFrom({2027, 1, 18})));
        QVERIFY(store::maySay(parent, journal::Kind::Count, *dayFrom({2027, 1, 18})).ok());
    }
};

QTEST_APPLESS_MAIN(TestGuest)
#include "tst_guest.moc"
