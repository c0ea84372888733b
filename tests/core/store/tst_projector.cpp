#include <QtTest>

#include "core/store/projector.h"
#include "core/store/recording.h"
#include "core/usecase/keep_box.h"
#include "core/usecase/play_activity.h"

#include "tests/support/phone.h"

#include <algorithm>
#include <random>

using namespace lidlark;
using namespace lidlark::store;
using namespace lidlark::test;

namespace {

/// An evening with everything in it.
void playAnEvening(Phone &phone)
{
    usecase::Workplace workplace = phone.workplace();
    const auto play = usecase::startPlay(
        workplace, {"Fin", {"hidden-harbour-lights"}, {}, checkin::Kite::Steady});
    QVERIFY(play.ok());
    QVERIFY(usecase::putBack(workplace, *play, {},
                             {{{"eyes"}, box::ExceptionKind::Lost, 2},
                              {{"dough"}, box::ExceptionKind::DriedOut, 1}})
                .ok());
    QVERIFY(usecase::noticePhrase(workplace, *play, play::Phrase::AskedAgain).ok());
    QVERIFY(usecase::noteFound(workplace, "Fin", {}, {"eyes"}, 1).ok());
    QVERIFY(usecase::countBox(workplace, "Fin", {}, {{{"pegs"}, 5}}).ok());
    QVERIFY(usecase::sayPlace(workplace, "Fin", "school", "at school").ok());
}

bool matches(Phone &phone)
{
    const auto same = Projector(phone.database).matchesRefold();
    return same && *same;
}

} // namespace

/// Guards events.md 1: rows are what the events say, and nothing else.
class TestProjector : public QObject
{
    Q_OBJECT

private slots:
    void rowsKeptUpEventByEventEqualARefold()
    {
        auto morven = therapistWith({"Fin", "Rory"});
        Phone ruth("Ruth", Role::Parent, "h-fin");
        QVERIFY(ruth.meet(*morven) > 0);
        playAnEvening(ruth);
        QVERIFY(matches(*morven));
        QVERIFY(matches(ruth));
    }

    /// A new lid list reaches items that nobody has spoken of: what belongs in the box changes,
    /// what lies in it does not (events.md 5, box revision).
    void aNewLidListReachesItemsNobodySpokeOf()
    {
        auto morven = therapistWith({"Fin"});
        auto packed = familyOf("Fin").packed;
        packed[{"pegs"}] = 4;
        packed.erase({"straw"});
        auto recording = Recording::begin(morven->database, morven->device, morven->clock);
        QVERIFY(recording.ok());
        QVERIFY(recording
                    ->say({journal::LaneKind::Box, "b-fin"}, journal::Kind::Revision,
                          box::fieldsOf(box::Revision{2, packed, {}}))
                    .ok());
        QVERIFY(recording->commit().ok());
        QCOMPARE(itemOf(*morven, "Fin", "pegs").expected, 4);
        QCOMPARE(itemOf(*morven, "Fin", "pegs").low, 6);
        QCOMPARE(itemOf(*morven, "Fin", "straw").expected, 0);
        QCOMPARE(itemOf(*morven, "Fin", "straw").low, 2);
        QVERIFY(matches(*morven));
    }

    /// A check that cannot fail would be worthless: a row changed by hand must be noticed.
    void aRowThatNoEventSaysIsNoticed_data()
    {
        QTest::addColumn<QByteArray>("sql");
        QTest::newRow("a count") << QByteArray("UPDATE box_item SET low = 0 WHERE item = 'pegs'");
        QTest::newRow("a fact") << QByteArray("UPDATE fact SET value = 'no' WHERE fact = 'lives'");
        QTest::newRow("a play") << QByteArray("DELETE FROM play");
        QTest::newRow("a loss") << QByteArray("UPDATE loss SET closed = 1");
        QTest::newRow("a check-in") << QByteArray("UPDATE check_in SET before = 'bag'");
    }

    void aRowThatNoEventSaysIsNoticed()
    {
        QFETCH(QByteArray, sql);
        auto morven = therapistWith({"Fin"});
        Phone ruth("Ruth", Role::Parent, "h-fin");
        ruth.meet(*morven);
        playAnEvening(ruth);
        QVERIFY(ruth.database.run(sql.toStdString()).ok());
        QVERIFY(!matches(ruth));
    }

    void eventsInAnyOrderAndTwiceGiveTheSameRows()
    {
        auto morven = therapistWith({"Fin"});
        Phone ruth("Ruth", Role::Parent, "h-fin");
        ruth.meet(*morven);
        playAnEvening(ruth);
        auto events = *EventRepository(ruth.database).all();
        std::mt19937 random(20270111);
        for (int round = 0; round < 5; ++round) {
            std::shuffle(events.begin(), events.end(), random);
            Phone other("Ruth", Role::Parent, "h-fin");
            for (int time = 0; time < 2; ++time) {
                for (const journal::Event &event : events) {
                    auto recording = Recording::begin(other.database, other.device, other.clock);
                    QVERIFY(recording.ok());
                    QVERIFY(recording->receive(event).ok());
                    QVERIFY(recording->commit().ok());
                }
            }
            QVERIFY(matches(other));
            QCOMPARE(itemOf(other, "Fin", "eyes").low, itemOf(ruth, "Fin", "eyes").low);
            QCOMPARE(itemOf(other, "Fin", "pegs").low, 5);
        }
    }

    /// checkin.md 13, check 9: nothing kept with a check-in places it within its part of the day.
    void aCheckInIsDatedWithItsPartAndNamesNoPlay()
    {
        auto morven = therapistWith({"Fin"});
        Phone ruth("Ruth", Role::Parent, "h-fin");
        ruth.meet(*morven);
        playAnEvening(ruth);
        const auto events = *EventRepository(ruth.database).all();
        const auto checkIn = std::find_if(events.begin(), events.end(), [](const auto &event) {
            return event.kind == journal::Kind::CheckIn;
        });
        QVERIFY(checkIn != events.end());
        QCOMPARE(checkIn->instant.ms, islandTime(11, 17, 0));
        QCOMPARE(checkIn->counter, std::uint64_t{1});
        QVERIFY(checkIn->fields.find("play") == std::string::npos);
        QVERIFY(checkIn->fields.find("activity") == std::string::npos);
    }

    void aClockThatWasNeverSetWritesNothing_data()
    {
        QTest::addColumn<QByteArray>("clock");
        QTest::newRow("1970") << QByteArray("1970-01-01T00:10:00Z");
        QTest::newRow("2100") << QByteArray("2100-01-01T12:00:00Z");
    }

    void aClockThatWasNeverSetWritesNothing()
    {
        QFETCH(QByteArray, clock);
        auto morven = therapistWith({"Fin"});
        Phone ruth("Ruth", Role::Parent, "h-fin");
        ruth.meet(*morven);
        const auto before = *EventRepository(ruth.database).count();
        ruth.clock.moveTo(*msFromText(clock.toStdString()));
        usecase::Workplace workplace = ruth.workplace();
        const auto play = usecase::startPlay(workplace, {"Fin", {"slow-oars"}, {}, std::nullopt});
        QVERIFY(!play.ok());
        QCOMPARE(play.error().code, ErrorCode::ClockUnset);
        QCOMPARE(*EventRepository(ruth.database).count(), before);
    }
};

QTEST_APPLESS_MAIN(TestProjector)
#include "tst_projector.moc"
