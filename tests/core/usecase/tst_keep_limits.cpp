#include <QtTest>

#include "core/store/projector.h"
#include "core/usecase/check_in.h"
#include "core/usecase/keep_box.h"
#include "core/usecase/keep_limits.h"

#include "tests/support/phone.h"

using namespace lidlark;
using namespace lidlark::test;

namespace {

Day january(int day)
{
    return *dayFrom({2027, 1, 1}) + (day - 1);
}

std::vector<checkin::CheckIn> checkInsOf(Phone &phone)
{
    const auto all = store::HomeRepository(phone.database).checkIns({"h-fin"}, {"c-fin"}, Day{0});
    return all ? *all : std::vector<checkin::CheckIn>();
}

/// Everything the store holds of check-ins, as text.
std::string rawCheckIns(Phone &phone)
{
    auto query = phone.database.prepare(
        "SELECT fields || ' ' || author || ' ' || subject || ' ' || day || ' ' || instant_ms "
        "FROM event WHERE kind = 'check-in' ORDER BY counter");
    std::string text;
    while (*query->step())
        text += query->text(0) + "\n";
    return text;
}

/// Ruth's phone with a check-in on 11 January and one twenty days later.
std::unique_ptr<Phone> withTwoCheckIns(Phone &morven)
{
    auto ruth = std::make_unique<Phone>("Ruth", store::Role::Parent, "h-fin");
    ruth->meet(morven);
    usecase::Workplace workplace = ruth->workplace();
    (void)usecase::checkIn(workplace, "Fin", checkin::Kite::Steady, checkin::ShownBy::Child);
    ruth->clock.moveTo(islandTime(31, 18, 0));
    (void)usecase::checkIn(workplace, "Fin", checkin::Kite::Resting, checkin::ShownBy::Child);
    return ruth;
}

/// So that the other device of the crew has reached that day too.
void markTheDay(Phone &phone)
{
    usecase::Workplace workplace = phone.workplace();
    (void)usecase::sayPlace(workplace, "Fin", "h-fin", "at home");
}

} // namespace

/// Source: events.md 9, keeping limits and the crew's day; checkin.md 9, 90 days.
class TestKeepLimits : public QObject
{
    Q_OBJECT
private slots:
    void theCrewsDayIsTheLatestThatTwoDevicesHaveReached()
    {
        QCOMPARE(usecase::crewDay({}, january(5)), january(5));
        QCOMPARE(usecase::crewDay({january(3), january(9), january(7)}, january(30)), january(7));
        QCOMPARE(usecase::crewDay({january(3), Day{1'000'000}}, january(30)), january(3));
        QCOMPARE(usecase::crewDay({january(3), january(3)}, january(30)), january(3));
    }

    void aLonePhoneIsBelievedForAMonthBeyondWhatItWrote()
    {
        QCOMPARE(usecase::crewDay({january(3)}, january(20)), january(20));
        QCOMPARE(usecase::crewDay({january(3)}, january(400)), january(3) + 31);
    }

    void aCheckInGoesForGoodAfterNinetyDays()
    {
        auto morven = therapistWith({"Fin"});
        auto ruth = withTwoCheckIns(*morven);
        usecase::Workplace workplace = ruth->workplace();
        for (Phone *phone : {ruth.get(), morven.get()}) {
            phone->clock.moveTo(islandTime(11 + 90, 9, 0));
            markTheDay(*phone);
        }
        ruth->meet(*morven);
        QVERIFY(usecase::keepLimits(workplace).ok());
        QCOMPARE(checkInsOf(*ruth).size(), std::size_t{2}); // the ninetieth day is kept
        for (Phone *phone : {ruth.get(), morven.get()}) {
            phone->clock.moveTo(islandTime(11 + 91, 9, 0));
            markTheDay(*phone);
        }
        ruth->meet(*morven);
        QVERIFY(usecase::keepLimits(workplace).ok());
        const auto left = checkInsOf(*ruth);
        QCOMPARE(left.size(), std::size_t{1});
        QCOMPARE(left.front().before, checkin::Kite::Resting);
        const std::string raw = rawCheckIns(*ruth);
        QVERIFY2(raw.starts_with("{}   0 0\n"), raw.c_str());
        QVERIFY(raw.find("steady") == std::string::npos);
        QVERIFY(*store::Projector(ruth->database).matchesRefold());
    }

    void anExpiredOneStaysAwayWhenItIsDeliveredAgain()
    {
        auto morven = therapistWith({"Fin"});
        auto ruth = withTwoCheckIns(*morven);
        Phone gran("Gran", store::Role::Caregiver, "h-fin");
        gran.meet(*ruth);
        QCOMPARE(checkInsOf(gran).size(), std::size_t{2});
        for (Phone *phone : {ruth.get(), &gran}) {
            phone->clock.moveTo(islandTime(11 + 100, 9, 0));
            markTheDay(*phone);
        }
        ruth->meet(gran);
        usecase::Workplace workplace = ruth->workplace();
        QVERIFY(usecase::keepLimits(workplace).ok());
        QCOMPARE(checkInsOf(*ruth).size(), std::size_t{1});
        ruth->meet(gran);
        QCOMPARE(checkInsOf(*ruth).size(), std::size_t{1});
        gran.meet(*ruth); // nothing of what was taken away is handed on, and nothing breaks
        QCOMPARE(checkInsOf(gran).size(), std::size_t{2});
    }

    void whatIsForgottenOnOnePhoneGoesOnTheOthers()
    {
        auto morven = therapistWith({"Fin"});
        auto ruth = withTwoCheckIns(*morven);
        Phone gran("Gran", store::Role::Caregiver, "h-fin");
        gran.meet(*ruth);
        QCOMPARE(checkInsOf(gran).size(), std::size_t{2});
        usecase::Workplace workplace = ruth->workplace();
        QVERIFY(usecase::forgetCheckIns(workplace, "Fin").ok());
        QVERIFY(checkInsOf(*ruth).empty());
        QVERIFY(rawCheckIns(*ruth).find("steady") == std::string::npos);
        gran.meet(*ruth);
        QVERIFY(checkInsOf(gran).empty());
        ruth->meet(gran); // and do not come back with her copy
        QVERIFY(checkInsOf(*ruth).empty());
        for (Phone *phone : {ruth.get(), &gran})
            QVERIFY(*store::Projector(phone->database).matchesRefold());
    }

    void oneClockInTheFarFutureExpiresNothing()
    {
        auto morven = therapistWith({"Fin"});
        auto ruth = withTwoCheckIns(*morven);
        ruth->clock.moveTo(islandTime(11 + 20 * 365, 9, 0));
        markTheDay(*ruth);
        usecase::Workplace workplace = ruth->workplace();
        QVERIFY(usecase::keepLimits(workplace).ok());
        QCOMPARE(checkInsOf(*ruth).size(), std::size_t{2});
    }
};

QTEST_APPLESS_MAIN(TestKeepLimits)
#include "tst_keep_limits.moc"
