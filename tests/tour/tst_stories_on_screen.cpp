#include <QtTest>

#include <QTemporaryDir>
#include <QtQml/qqmlextensionplugin.h>

#include "tests/tour/open_app.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

using namespace lidlark;
using namespace lidlark::test;

/// Guards job.md scenarios 6 and 8 through the real screens.
class TestStoriesOnScreen : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_folder;

    QString storeOf(const std::string &child, const std::string &person, const std::string &home)
    {
        QString file =
            m_folder.filePath(QString::fromStdString(child) + QStringLiteral(".lidlark"));
        writeStore(file, child, person, home);
        return file;
    }

private slots:
    void initTestCase()
    {
        wakeAccessibleTree();
        Hand::beQuick();
    }

    /// Scenario 6: started on Saturday at 17:42, the battery out, the phone back on Sunday.
    void thePhoneDiesAndSundayAsksOneQuestion()
    {
        const QString store = storeOf("Fin", "Ruth", "h-fin");
        {
            OpenApp saturday(store, "2027-01-16T17:42:00Z");
            Hand hand = saturday.hand();
            QVERIFY(hand.tap(QStringLiteral("Who is here")));
            QVERIFY(hand.tap(QStringLiteral("Nobody else")));
            QVERIFY(hand.tap(QStringLiteral("That's")));
            QVERIFY(hand.tap(QStringLiteral("Everything")));
            QVERIFY(hand.tap(QStringLiteral("Slow Oars")));
            QVERIFY(saturday.graph.playInHand().active());
        } // the battery is out: nobody said goodbye
        OpenApp sunday(store, "2027-01-17T09:30:00Z");
        Hand hand = sunday.hand();
        QVERIFY2(hand.find(QStringLiteral("All back in the box")) != nullptr ||
                     hand.find(QStringLiteral("Yes, all back")) != nullptr,
                 qPrintable(hand.names().join(u'|')));
        QVERIFY(hand.find(QStringLiteral("Something's different")) != nullptr);
        QVERIFY(hand.find(QStringLiteral("We stopped early")) != nullptr);
        QVERIFY(hand.find(QStringLiteral("Flying steady")) == nullptr); // no kite on Sunday
        QVERIFY(hand.tap(QStringLiteral("We stopped early")));
        QVERIFY(!sunday.graph.playInHand().active());
        const auto family = sunday.graph.household().family();
        QCOMPARE(family->plays.size(), std::size_t{1});
        QVERIFY(family->plays.front().when.day == *dayFrom({2027, 1, 16}));
        QCOMPARE(*family->plays.front().ending, play::Ending::Stopped);
    }

    /// Killed the same evening, the phone comes back to the step it showed.
    void theSameEveningComesBackToTheSameStep()
    {
        const QString store = storeOf("Fin", "Ruth", "h-fin");
        {
            OpenApp first(store, "2027-01-16T17:42:00Z");
            Hand hand = first.hand();
            QVERIFY(hand.tap(QStringLiteral("Everything")));
            QVERIFY(hand.tap(QStringLiteral("Slow Oars")));
            QVERIFY(hand.tap(QStringLiteral("Next step")));
        }
        OpenApp again(store, "2027-01-16T17:50:00Z");
        QVERIFY(again.hand().find(QStringLiteral("Stop here")) != nullptr);
        QCOMPARE(again.graph.playInHand().step(), 1);
    }

    /// Scenario 8: bag, bag, no answer; from the fourth evening nobody is asked first, and the
    /// offers stay three throughout.
    void theChildWillNotAndNobodyInsists()
    {
        const QString store = storeOf("Oona", "Eoin", "h-oona");
        const char *evenings[] = {"2027-01-11T18:00:00Z", "2027-01-12T18:00:00Z",
                                  "2027-01-13T18:00:00Z"};
        for (const char *evening : evenings) {
            OpenApp app(store, evening);
            Hand hand = app.hand();
            QVERIFY2(hand.tap(QStringLiteral("Kite: not asked")),
                     qPrintable(hand.names().join(u'|')));
            if (evening != evenings[2])
                QVERIFY(hand.tap(QStringLiteral("In the bag")));
            Hand::settle(700);
            QVERIFY(hand.hold(QStringLiteral("adult: hold")));
            int offers = 0;
            for (const QString &name : hand.names())
                offers += name.contains(QStringLiteral(". play ")) ? 1 : 0;
            QCOMPARE(offers, 3);
            QVERIFY(hand.find(QStringLiteral("Are you sure")) == nullptr);
        }
        OpenApp fourth(store, "2027-01-14T18:00:00Z");
        QVERIFY(fourth.hand().find(QStringLiteral("Kite: not asked")) == nullptr);
    }
};

QTEST_MAIN(TestStoriesOnScreen)
#include "tst_stories_on_screen.moc"
