#include <QtTest>

#include "core/store/event_repository.h"
#include "core/usecase/restock.h"

#include "tests/support/phone.h"

using namespace lidlark;
using namespace lidlark::test;

/// Guards a request from the asking to the counting in: job.md G5, events.md 5.
class TestRestock : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<Phone> m_morven;
    std::unique_ptr<Phone> m_ruth;
    std::unique_ptr<Phone> m_gran;

    static Outcome ask(Phone &phone, const char *item)
    {
        usecase::Workplace workplace = phone.workplace();
        return usecase::askFor(workplace, "Fin", {}, {item});
    }
    static Outcome move(Phone &phone, const char *item, box::RequestStep step)
    {
        usecase::Workplace workplace = phone.workplace();
        return usecase::moveRequest(workplace, "Fin", {}, {item}, step);
    }
    static Outcome countIn(Phone &phone, const char *item, int pieces)
    {
        usecase::Workplace workplace = phone.workplace();
        return usecase::countIn(workplace, "Fin", {}, {item}, pieces);
    }
    static std::int64_t eventsOn(Phone &phone)
    {
        return *store::EventRepository(phone.database).count();
    }

private slots:
    void init()
    {
        m_morven = therapistWith({"Fin"});
        m_ruth = std::make_unique<Phone>("Ruth", store::Role::Parent, "h-fin");
        m_gran = std::make_unique<Phone>("Gran", store::Role::Caregiver, "h-fin");
        QVERIFY(m_ruth->meet(*m_morven) > 0);
        QVERIFY(m_gran->meet(*m_morven) > 0);
    }

    void twoPhonesOfflineAskOnce()
    {
        QVERIFY(ask(*m_ruth, "eyes").ok());
        QVERIFY(ask(*m_gran, "eyes").ok());
        (void)m_morven->meet(*m_ruth);
        (void)m_morven->meet(*m_gran);
        const auto requests = itemOf(*m_morven, "Fin", "eyes").requests;
        QCOMPARE(requests.size(), std::size_t{1});
        QVERIFY(requests.front().step == box::RequestStep::Asked);
        const auto events = eventsOn(*m_ruth);
        QVERIFY(ask(*m_ruth, "eyes").ok()); // a second tap writes nothing
        QCOMPARE(eventsOn(*m_ruth), events);
    }

    void theStepsRiseAndTheFamilySeesThem()
    {
        QVERIFY(ask(*m_ruth, "eyes").ok());
        (void)m_morven->meet(*m_ruth);
        QVERIFY(move(*m_morven, "eyes", box::RequestStep::Seen).ok());
        QVERIFY(move(*m_morven, "eyes", box::RequestStep::OnItsWay).ok());
        const auto events = eventsOn(*m_morven);
        QVERIFY(move(*m_morven, "eyes", box::RequestStep::Packed).ok()); // a step back: nothing
        QCOMPARE(eventsOn(*m_morven), events);
        (void)m_ruth->meet(*m_morven);
        QVERIFY(itemOf(*m_ruth, "Fin", "eyes").requests.front().step == box::RequestStep::OnItsWay);
        QCOMPARE(itemOf(*m_ruth, "Fin", "eyes").low, 6); // nothing is in the box by being sent
    }

    void countingInRaisesTheStockOnceHoweverManySayIt()
    {
        QVERIFY(ask(*m_ruth, "eyes").ok());
        (void)m_gran->meet(*m_ruth);
        QVERIFY(countIn(*m_ruth, "eyes", 2).ok());
        QVERIFY(countIn(*m_gran, "eyes", 2).ok());
        (void)m_ruth->meet(*m_gran);
        const store::ItemRow row = itemOf(*m_ruth, "Fin", "eyes");
        QCOMPARE(row.low, 8);
        QCOMPARE(row.high, 8);
        QVERIFY(!row.requests.back().isOpen());
        // The next asking is a new request.
        QVERIFY(ask(*m_ruth, "eyes").ok());
        QCOMPARE(itemOf(*m_ruth, "Fin", "eyes").requests.size(), std::size_t{2});
    }

    void differentNumbersAreAskedAboutAndCanBePutRight()
    {
        QVERIFY(countIn(*m_ruth, "eyes", 2).ok()); // it came without anybody asking
        QVERIFY(countIn(*m_gran, "eyes", 3).ok());
        (void)m_ruth->meet(*m_gran);
        QCOMPARE(itemOf(*m_ruth, "Fin", "eyes").low, 8);
        QCOMPARE(itemOf(*m_ruth, "Fin", "eyes").high, 9);
        QCOMPARE(itemOf(*m_ruth, "Fin", "eyes").questions.size(), std::size_t{1});
        usecase::Workplace workplace = m_ruth->workplace();
        QVERIFY(usecase::correctCountedIn(workplace, "Fin", {}, {"eyes"}, 3).ok());
        QCOMPARE(itemOf(*m_ruth, "Fin", "eyes").low, 9);
        QVERIFY(itemOf(*m_ruth, "Fin", "eyes").questions.empty());
    }

    /// A swap that no lid list names yet can be asked for, and then lies in the box.
    void somethingInsteadCanBeAskedFor()
    {
        usecase::Workplace workplace = m_ruth->workplace();
        QVERIFY(usecase::askFor(workplace, "Fin", {}, {"loops"}, {"bands"}).ok());
        QVERIFY(itemOf(*m_ruth, "Fin", "loops").requests.front().insteadOf == ItemId{"bands"});
        QVERIFY(countIn(*m_ruth, "loops", 6).ok());
        QCOMPARE(itemOf(*m_ruth, "Fin", "loops").low, 6);
    }

    void badInputIsNamedAndWritesNothing()
    {
        const auto events = eventsOn(*m_ruth);
        const auto refused = [](const Outcome &done, ErrorCode code) {
            return !done.ok() && done.error().code == code;
        };
        QVERIFY(refused(ask(*m_ruth, "diamonds"), ErrorCode::NotFound));
        QVERIFY(refused(ask(*m_ruth, "towel"), ErrorCode::NotFound)); // a home's own thing
        QVERIFY(refused(countIn(*m_ruth, "eyes", 0), ErrorCode::Invalid));
        QVERIFY(refused(countIn(*m_ruth, "eyes", -2), ErrorCode::Invalid));
        QVERIFY(refused(countIn(*m_ruth, "eyes", 1000), ErrorCode::Invalid));
        QVERIFY(refused(move(*m_ruth, "eyes", box::RequestStep::Seen), ErrorCode::NotFound));
        QVERIFY(ask(*m_ruth, "eyes").ok());
        QVERIFY(refused(move(*m_ruth, "eyes", box::RequestStep::CountedIn), ErrorCode::Invalid));
        usecase::Workplace workplace = m_ruth->workplace();
        QVERIFY(refused(usecase::correctCountedIn(workplace, "Fin", {}, {"eyes"}, 2),
                        ErrorCode::NotFound));
        QVERIFY(refused(usecase::askFor(workplace, "Nobody", {}, {"eyes"}), ErrorCode::NotFound));
        QCOMPARE(eventsOn(*m_ruth), events + 1);
    }
};

QTEST_APPLESS_MAIN(TestRestock)
#include "tst_restock.moc"
