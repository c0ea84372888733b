#include <QtTest>

#include "core/store/recording.h"
#include "core/usecase/play_activity.h"

#include "tests/support/phone.h"

using namespace lidlark;
using namespace lidlark::test;

namespace {

std::vector<std::string> threeOn(Phone &phone, const std::string &child)
{
    usecase::Workplace workplace = phone.workplace();
    usecase::MenuRequest request;
    request.child = child;
    const auto today = usecase::suggestToday(workplace, request);
    std::vector<std::string> ids;
    if (today) {
        for (const rotation::Offer &offer : today->menu.offers)
            ids.push_back(offer.admitted.activity().id.value);
    }
    return ids;
}

} // namespace

/// Guards design.md 5: phones of one home that hold the same events show the same three, and a
/// home with no history gets three too.
class TestSameThree : public QObject
{
    Q_OBJECT

private slots:
    void everyChildOfTheIslandIsOfferedThree_data()
    {
        QTest::addColumn<QByteArray>("child");
        for (const auto &family : usecase::island::families())
            QTest::newRow(family.child.c_str()) << QByteArray::fromStdString(family.child);
    }

    void everyChildOfTheIslandIsOfferedThree()
    {
        QFETCH(QByteArray, child);
        const std::string alias = child.toStdString();
        auto morven = therapistWith({alias});
        Phone phone("First", store::Role::Parent, familyOf(alias).homes.front().id);
        QVERIFY(phone.meet(*morven) > 0);
        QCOMPARE(threeOn(phone, alias).size(), std::size_t{3});
    }

    void twoStoresThatNeverMetButHoldTheSameEventsAgree()
    {
        auto morven = therapistWith({"Fin"});
        Phone ruth("Ruth", store::Role::Parent, "h-fin");
        ruth.meet(*morven);
        usecase::Workplace workplace = ruth.workplace();
        for (int day = 5; day < 11; ++day) {
            ruth.clock.moveTo(islandTime(day, 18, 0));
            usecase::MenuRequest request;
            request.child = "Fin";
            const auto today = usecase::suggestToday(workplace, request);
            QVERIFY(today.ok());
            QVERIFY(usecase::markOffered(workplace, *today).ok());
            const auto play = usecase::startPlay(
                workplace,
                {"Fin", today->menu.offers.front().admitted.activity().id, {}, std::nullopt});
            QVERIFY(usecase::putBack(workplace, *play, {}, {}).ok());
        }
        ruth.clock.moveTo(islandTime(11, 18, 10));
        // The same events, handed over by somebody else, in the opposite order.
        auto events = *store::EventRepository(ruth.database).all();
        std::reverse(events.begin(), events.end());
        Phone gran("Gran", store::Role::Caregiver, "h-fin");
        auto recording = store::Recording::begin(gran.database, gran.device, gran.clock);
        for (const journal::Event &event : events)
            QVERIFY(recording->receive(event).ok());
        QVERIFY(recording->commit().ok());
        gran.clock.moveTo(islandTime(11, 18, 20)); // ten minutes later, same part of the day
        QVERIFY(threeOn(gran, "Fin") == threeOn(ruth, "Fin"));
    }

    void aMenuThatWasShownDoesNotChangeItself()
    {
        auto morven = therapistWith({"Fin"});
        Phone ruth("Ruth", store::Role::Parent, "h-fin");
        ruth.meet(*morven);
        const auto before = threeOn(ruth, "Fin");
        usecase::Workplace workplace = ruth.workplace();
        usecase::MenuRequest request;
        request.child = "Fin";
        QVERIFY(usecase::markOffered(workplace, *usecase::suggestToday(workplace, request)).ok());
        QVERIFY(threeOn(ruth, "Fin") == before);
    }

    /// job.md F5: removing any one item leaves at least three offers.
    void anyOneItemMayBeMissing()
    {
        for (const auto &[item, packed] : usecase::island::standardBox()) {
            auto morven = therapistWith({});
            usecase::island::Family fin = familyOf("Fin");
            fin.packed.erase(item);
            usecase::Workplace therapist = morven->workplace();
            QVERIFY(usecase::issueBox(therapist, fin).ok());
            Phone ruth("Ruth", store::Role::Parent, "h-fin");
            ruth.meet(*morven);
            QVERIFY2(threeOn(ruth, "Fin").size() == 3, item.value.c_str());
        }
    }

    void anythingAtAllIsNeverTheSameTwiceRunning()
    {
        auto morven = therapistWith({"Fin"});
        Phone ruth("Ruth", store::Role::Parent, "h-fin");
        ruth.meet(*morven);
        usecase::Workplace workplace = ruth.workplace();
        usecase::MenuRequest request;
        request.child = "Fin";
        ActivityId last;
        std::set<ActivityId> seen;
        for (int i = 0; i < 60; ++i) {
            request.without = {last};
            const auto any = usecase::anythingAtAll(workplace, request);
            QVERIFY(any.ok());
            QVERIFY(any->activity().id != last);
            last = any->activity().id;
            seen.insert(last);
        }
        QVERIFY(seen.size() > 10);
    }
};

QTEST_APPLESS_MAIN(TestSameThree)
#include "tst_same_three.moc"
