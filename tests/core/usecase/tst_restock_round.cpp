#include <QtTest>

#include "core/usecase/restock_round.h"
#include "core/usecase/revise_box.h"

#include "tests/support/phone.h"

using namespace lidlark;
using namespace lidlark::test;

/// Guards the restock round (job.md T13): all requests by item, post or visit, and "packed" for
/// each family by a tick.
class TestRestockRound : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<Phone> m_morven;

    void ask(const std::string &child, const std::string &person, const std::string &home,
             const char *item)
    {
        Phone phone(person, store::Role::Parent, home);
        QVERIFY(phone.meet(*m_morven) > 0);
        usecase::Workplace workplace = phone.workplace();
        QVERIFY(usecase::askFor(workplace, child, {}, {item}).ok());
        QVERIFY(m_morven->meet(phone) > 0);
    }
    [[nodiscard]] usecase::RestockRound round()
    {
        usecase::Workplace workplace = m_morven->workplace();
        const auto found = usecase::restockRound(workplace);
        return found ? *found : usecase::RestockRound{};
    }
    [[nodiscard]] box::RequestStep stepOf(const std::string &child, const char *item)
    {
        return itemOf(*m_morven, child, item).requests.back().step;
    }

private slots:
    void init()
    {
        m_morven = therapistWith({"Rory", "Fin", "Nuala"});
        m_morven->clock.moveTo(islandTime(15, 9, 0));
        ask("Rory", "Struan", "h-rory", "eyes");
        ask("Fin", "Ruth", "h-fin", "eyes");
        ask("Fin", "Ruth", "h-fin", "crayons");
    }

    void requestsOfAllBoxesStandByItemThenBox()
    {
        const usecase::RestockRound now = round();
        QCOMPARE(now.items.size(), std::size_t{2});
        QCOMPARE(now.items[0].item.value, std::string("crayons"));
        QCOMPARE(now.items[1].item.value, std::string("eyes"));
        QCOMPARE(now.items[1].lines.size(), std::size_t{2});
        QCOMPARE(now.items[1].lines[0].child, std::string("Fin"));
        QCOMPARE(now.items[1].lines[1].child, std::string("Rory"));
        QCOMPARE(now.items[1].lines[1].askedBy, std::string("Struan"));
        QCOMPARE(now.items[1].piecesToPack(), 2);
        QCOMPARE(now.boxes.size(), std::size_t{2}); // nothing goes to Nuala
    }

    void aTickPacksThatFamilysRequestAndNoOther()
    {
        usecase::Workplace workplace = m_morven->workplace();
        QVERIFY(usecase::packFor(workplace, "Fin", {"eyes"}).ok());
        QVERIFY(stepOf("Fin", "eyes") == box::RequestStep::Packed);
        QVERIFY(stepOf("Rory", "eyes") == box::RequestStep::Asked);
        QVERIFY(round().items[1].lines[0].packed);
        QCOMPARE(round().items[1].piecesToPack(), 1);
        const Outcome refused = usecase::packFor(workplace, "Nuala", {"eyes"});
        QVERIFY(!refused.ok() && refused.error().code == ErrorCode::NotFound);
    }

    void whatIsPackedLeavesTogetherAndTheRestStays()
    {
        usecase::Workplace workplace = m_morven->workplace();
        const Outcome nothing = usecase::sendOff(workplace, "Fin");
        QVERIFY(!nothing.ok() && nothing.error().code == ErrorCode::NotFound);
        QVERIFY(usecase::packFor(workplace, "Fin", {"eyes"}).ok());
        QVERIFY(usecase::sendOff(workplace, "Fin").ok());
        QVERIFY(stepOf("Fin", "eyes") == box::RequestStep::OnItsWay);
        QVERIFY(stepOf("Fin", "crayons") == box::RequestStep::Asked);
        const usecase::RestockRound now = round();
        QCOMPARE(now.items[1].lines.size(), std::size_t{1}); // Rory's eyes
        QCOMPARE(now.boxes[0].toPack, 1);
        QCOMPARE(now.boxes[0].packed, 0);
    }

    void postOrVisitIsKeptForEachBox()
    {
        usecase::Workplace workplace = m_morven->workplace();
        QVERIFY(round().boxes[0].way == usecase::Way::Post);
        QVERIFY(usecase::goBy(workplace, "Fin", usecase::Way::Visit).ok());
        QVERIFY(round().boxes[0].way == usecase::Way::Visit);
        QVERIFY(round().boxes[1].way == usecase::Way::Post);
        QVERIFY(!usecase::goBy(workplace, "Nobody", usecase::Way::Visit).ok());
    }

    void whatANewListRemovesIsNotPackedAnyMore()
    {
        usecase::Workplace workplace = m_morven->workplace();
        auto packed = usecase::island::standardBox();
        packed.erase({"eyes"});
        QVERIFY(usecase::reviseBox(workplace, "Rory", {}, packed).ok());
        QCOMPARE(round().items[1].lines.size(), std::size_t{1});
    }
};

QTEST_APPLESS_MAIN(TestRestockRound)
#include "tst_restock_round.moc"
