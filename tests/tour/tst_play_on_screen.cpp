#include <QtTest>

#include <QTemporaryDir>
#include <QtQml/qqmlextensionplugin.h>

#include "mobile/design/drawing_shelf.h"
#include "tests/tour/open_app.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

using namespace lidlark;
using namespace lidlark::test;

/// Guards Play and Put back on the real screens (job.md F3, F4, F6, C3; look.md 6).
class TestPlayOnScreen : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_folder;
    std::unique_ptr<OpenApp> m_app;

    [[nodiscard]] Hand hand() const { return m_app->hand(); }
    [[nodiscard]] mobile::PlayInHand &play() const { return m_app->graph.playInHand(); }
    [[nodiscard]] store::ItemRow eyes() const
    {
        const auto family = m_app->graph.household().family();
        for (const store::ItemRow &row : family->items) {
            if (row.item.value == "eyes")
                return row;
        }
        return {};
    }
    void begin(const char *activity)
    {
        QVERIFY(hand().tap(text("Everything")));
        QVERIFY2(hand().tap(text(activity)), qPrintable(hand().names().join(u'|')));
        QVERIFY(play().active());
    }
    void openDifferent()
    {
        begin("Hidden Harbour Lights");
        QVERIFY(hand().tap(text("Stop here")));
        QVERIFY(hand().tap(text("Something's different")));
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
        QVERIFY(hand().tap(text("Who is here")));
        QVERIFY(hand().tap(text("Nobody else")));
        QVERIFY(hand().tap(text("That's")));
    }
    void cleanup() { m_app.reset(); }

    /// look.md 7: supervision stands on every offer, a screen reader hears it too.
    void everyOfferSaysHowNearAnAdultMustBe()
    {
        int offers = 0;
        for (const QString &name : hand().names().filter(text(". play "))) {
            QVERIFY2(name.contains(text("Right beside")) || name.contains(text("Arm's reach")) ||
                         name.contains(text("Same room")),
                     qPrintable(name));
            ++offers;
        }
        QCOMPARE(offers, 3);
    }

    /// A drawing that is not among the app's resources would show as a dotted frame.
    void everyDrawingOfTheCatalogueIsInTheApp()
    {
        const auto &catalogue = m_app->graph.household().catalogue();
        const auto there = [](const std::string &name) {
            return design::hasDrawing(QString::fromStdString(name));
        };
        for (const catalogue::ItemKind &item : catalogue.items())
            QVERIFY2(there(item.drawing), item.drawing.c_str());
        for (const catalogue::Activity &activity : catalogue.activities()) {
            QVERIFY2(there(activity.picture.drawing), activity.picture.drawing.c_str());
            for (const catalogue::Step &step : activity.steps)
                QVERIFY2(!step.picture || there(step.picture->drawing), activity.id.value.c_str());
        }
        // For a left-handed child, but never with scissors.
        QVERIFY(there("scene-slow-oars-left"));
        QVERIFY(!there("scene-snip-hedge-left"));
    }

    void theCautionIsReadBeforeTheStep()
    {
        begin("Hidden Harbour Lights");
        const QStringList words = hand().words();
        const auto caution = words.indexOf(words.filter(text("Right beside Fin")).value(0));
        const auto step = words.indexOf(words.filter(text("Sit side by side")).value(0));
        QVERIFY2(caution >= 0 && step > caution, qPrintable(words.join(u'|')));
    }

    void aStepGoesForthAndBack()
    {
        begin("Hidden Harbour Lights");
        QVERIFY(hand().find(text("One step back")) == nullptr);
        QVERIFY(hand().tap(text("Next step")));
        QCOMPARE(play().step(), 1);
        QVERIFY(hand().tap(text("One step back")));
        QCOMPARE(play().step(), 0);
    }

    /// F6: one large yes ends it, whatever the tray shows.
    void oneYesPutsEverythingHome()
    {
        begin("Hidden Harbour Lights");
        QVERIFY(hand().tap(text("Stop here")));
        QVERIFY(hand().tap(text("All back in the box?")));
        QVERIFY(!play().active());
        QCOMPARE(eyes().low, 6);
        QCOMPARE(eyes().high, 6);
    }

    void anExceptionIsTwoTapsAndCanBeTakenBack()
    {
        openDifferent();
        QVERIFY(hand().tap(text("Stick-on eyes: used up")));
        QCOMPARE(eyes().low, 5);
        QVERIFY(hand().tap(text("3")));
        QCOMPARE(eyes().low, 3);
        QVERIFY(hand().tap(text("Stick-on eyes: used up")));
        QVERIFY(hand().tap(text("The rest is back")));
        QCOMPARE(eyes().low, 6);
    }

    /// The same word tapped from a restarted phone is the same fact (design.md 3).
    void anotherWordReplacesTheFirst()
    {
        openDifferent();
        QVERIFY(hand().tap(text("Stick-on eyes: used up")));
        QVERIFY(hand().tap(text("Stick-on eyes: broken")));
        QVERIFY(hand().tap(text("The rest is back")));
        QCOMPARE(eyes().low, 5);
        QVERIFY(hand().tap(text("Done")));
        QVERIFY(hand().tap(text("Notebook")));
        QVERIFY2(hand().reads(text("One stick-on eye broken")),
                 qPrintable(hand().words().join(u'|')));
    }

    /// Scenario 2: a burst balloon stops everything until its pieces are spoken of.
    void aBurstStopsEverythingElse()
    {
        begin("Slow-Sky Taps");
        QVERIFY(hand().tap(text("It burst")));
        QVERIFY(hand().reads(text("Pick up every piece now")));
        QVERIFY(hand().find(text("Next step")) == nullptr);
        QVERIFY(hand().tap(text("All pieces found")));
        QVERIFY(hand().reads(text("none to come")));
    }

    void whatWasNoticedStandsInTheNotebook()
    {
        begin("Torn-Paper Coast");
        QVERIFY(hand().tap(text("Stop here")));
        QVERIFY(hand().tap(text("Done"))); // nothing came out of the box
        QVERIFY(hand().tap(text("Asked for it again")));
        QVERIFY(hand().tap(text("Done")));
        QVERIFY(hand().tap(text("Notebook")));
        QVERIFY(hand().reads(text("Torn-Paper Coast")));
        QVERIFY(hand().reads(text("Asked for it again")));
    }
};

QTEST_MAIN(TestPlayOnScreen)
#include "tst_play_on_screen.moc"
