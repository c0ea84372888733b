#include <QtTest>

#include <QTemporaryDir>
#include <QtQml/qqmlextensionplugin.h>

#include "mobile/bridge/sitting.h"
#include "tests/tour/open_app.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

using namespace lidlark;
using namespace lidlark::test;

/// Guards the week ahead on the real screens: changed by hand, planned anew around it.
class TestWeekOnScreen : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_folder;
    std::unique_ptr<OpenApp> m_app;

    [[nodiscard]] Hand hand() const { return m_app->hand(); }
    [[nodiscard]] usecase::Week week() const { return *m_app->graph.household().week(); }
    [[nodiscard]] QString planned(std::size_t day) const
    {
        const auto offers = week().days[day].planned;
        return offers.empty() ? QString() : QString::fromStdString(offers.front().activity().name);
    }

private slots:
    void initTestCase()
    {
        wakeAccessibleTree();
        Hand::beQuick();
    }
    void init()
    {
        m_app.reset();
        const QString file = m_folder.filePath(text("fin.lidlark"));
        writeStore(file, "Fin", "Ruth", "h-fin");
        m_app = std::make_unique<OpenApp>(file, mondayEvening);
        QVERIFY2(hand().tap(text("The week ahead")), qPrintable(hand().names().join(u'|')));
    }
    void cleanup() { m_app.reset(); }

    void sevenDaysAreRead()
    {
        for (const char *day : {"Today: ", "Tomorrow: ", "Wednesday: ", "Thursday: ", "Friday: ",
                                "Saturday: ", "Sunday: "})
            QVERIFY2(hand().find(text(day)) != nullptr, day);
        QVERIFY(!hand().reads(text("in a hundred"))); // the best week, proven
    }

    void aDayIsKeptSwappedLeftFreeAndGivenBack()
    {
        const QString tomorrow = planned(1);
        QVERIFY(hand().tap(text("Tomorrow: ")));
        QVERIFY(hand().tap(text("Keep it here")));
        QCOMPARE(week().days[1].wish, play::Wish::Keep);
        QCOMPARE(planned(1), tomorrow);
        QVERIFY(hand().tap(text("Another one")));
        QVERIFY(planned(1) != tomorrow);
        QCOMPARE(week().days[1].wish, play::Wish::Keep);
        QVERIFY(hand().tap(text("Leave it free")));
        QVERIFY(hand().find(text("Tomorrow: Left free")) != nullptr);
        QVERIFY(hand().tap(text("Let the plan decide")));
        QCOMPARE(planned(1), tomorrow);
    }

    void theWholeWeekIsKeptAndStartedAfresh()
    {
        QVERIFY(hand().tap(text("Keep this week")));
        for (const usecase::WeekDay &day : week().days)
            QCOMPARE(day.wish, play::Wish::Keep);
        QVERIFY(hand().tap(text("Start afresh")));
        for (const usecase::WeekDay &day : week().days)
            QCOMPARE(day.wish, play::Wish::Open);
    }

    void whatIsKeptForTodayStandsOnTheFirstScreenAndBegins()
    {
        QVERIFY(hand().tap(text("Today: ")));
        QVERIFY(hand().tap(text("Keep it here")));
        const auto menu = m_app->graph.sitting().menu();
        while (std::ranges::any_of(menu->menu.offers, [this](const rotation::Offer &offer) {
            return QString::fromStdString(offer.admitted.activity().name) == planned(0);
        }))
            QVERIFY(hand().tap(text("Another one"))); // until it is none of the three offers
        const QString today = planned(0);
        QVERIFY(hand().tap(text("Back to today")));
        QVERIFY2(hand().tap(text("Kept for today: ") + today),
                 qPrintable(hand().names().join(u'|')));
        QCOMPARE(m_app->graph.playInHand().activityName(), today);
    }

    void anOfferThatIsKeptForTodaySaysSo()
    {
        const auto menu = m_app->graph.sitting().menu();
        const catalogue::Activity &first = menu->menu.offers.front().admitted.activity();
        usecase::Workplace &workplace = m_app->graph.household().workplace();
        const play::DayWish wish{play::Wish::Keep, first.id};
        QVERIFY(usecase::wishForDay(workplace, "Fin", week().days[0].day, wish).ok());
        m_app->graph.household().announce();
        QVERIFY(hand().tap(text("Back to today")));
        const QString name = QString::fromStdString(first.name);
        QCOMPARE(hand().names().filter(name).filter(text("Kept for today")).size(), 1);
        QVERIFY(hand().find(text("Kept for today: ")) == nullptr);
    }

    void todayIsPlayedFromTheWeek()
    {
        const QString today = planned(0);
        QVERIFY(hand().tap(text("Today: ")));
        QVERIFY(hand().tap(text("Play it now")));
        QCOMPARE(m_app->graph.playInHand().activityName(), today);
    }

    /// What was planned for the home is not played beside a visitor it is not safe for.
    void aVisitorIsHeardBeforeThePlan()
    {
        usecase::Workplace &workplace = m_app->graph.household().workplace();
        const play::DayWish lights{play::Wish::Keep, {"hidden-harbour-lights"}};
        QVERIFY(usecase::wishForDay(workplace, "Fin", week().days[0].day, lights).ok());
        safety::Room room;
        room.present = std::vector<PersonId>{};
        room.visitorUnderThree = room.visitorMouther = true;
        m_app->graph.sitting().setRoom(room);
        m_app->graph.household().announce();
        Hand::settle();
        QVERIFY(hand().tap(text("Today: Hidden Harbour Lights")));
        QVERIFY(hand().tap(text("Play it now")));
        QVERIFY(!m_app->graph.playInHand().active());
        QVERIFY(hand().reads(text("It does not fit who is here just now")));
        QVERIFY(hand().tap(text("Back to today")));
        QVERIFY(hand().find(text("Kept for today")) == nullptr);
    }
};

QTEST_MAIN(TestWeekOnScreen)
#include "tst_week_on_screen.moc"
