#include <QtTest>

#include <QTemporaryDir>
#include <QtQml/qqmlextensionplugin.h>

#include "tests/tour/open_app.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

using namespace lidlark;
using namespace lidlark::test;

/// Guards that what a family says about box, room, home and phone on the real screens is kept and
/// acts at once (job.md F1, F5, S1, S2, A3).
class TestBoxAndHomeOnScreen : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_folder;
    QString m_file;
    std::unique_ptr<OpenApp> m_app;

    [[nodiscard]] Hand hand() const { return m_app->hand(); }
    void start()
    {
        m_app.reset();
        m_app = std::make_unique<OpenApp>(m_file, mondayEvening);
    }
    [[nodiscard]] int eyesInTheBox() const
    {
        const auto family = m_app->graph.household().family();
        for (const store::ItemRow &row : family->items) {
            if (row.item.value == "eyes")
                return row.low;
        }
        return -1;
    }
    /// What "Everything" says of an activity; empty: it is not on the list.
    [[nodiscard]] QString lineOf(const char *activity) const
    {
        return hand().names().filter(text(activity)).value(0);
    }

    /// It comes from the home, or something of the home may take its place (a towel for the band).
    [[nodiscard]] bool canDoWithoutTheBox(const catalogue::Activity &activity,
                                          const catalogue::ItemUse &use) const
    {
        const auto &catalogue = m_app->graph.household().catalogue();
        return use.source != catalogue::Source::Box ||
               std::ranges::any_of(activity.swaps, [&](const catalogue::ActivitySwap &swap) {
                   return swap.item == use.item &&
                          catalogue.item(swap.with)->source == catalogue::Source::Home;
               });
    }

private slots:
    void initTestCase()
    {
        wakeAccessibleTree();
        Hand::beQuick();
        m_file = m_folder.filePath(text("fin.lidlark"));
    }
    void init()
    {
        m_app.reset();
        writeStore(m_file, "Fin", "Ruth", "h-fin");
        start();
    }
    void cleanup() { m_app.reset(); }

    void aCountIsKeptOverARestart()
    {
        QVERIFY(hand().tap(text("Box")));
        QVERIFY(hand().find(text("stick-on eyes, 6")) != nullptr ||
                hand().reads(text("stick-on eyes, 6")));
        QVERIFY(hand().tap(text("Count it all")));
        QVERIFY(hand().tap(text("One less: stick-on eyes")));
        QVERIFY(hand().tap(text("One less: stick-on eyes")));
        QCOMPARE(eyesInTheBox(), 6); // nothing is written before it is said
        QVERIFY(hand().tap(text("That's what is here")));
        QCOMPARE(eyesInTheBox(), 4);
        start();
        QCOMPARE(eyesInTheBox(), 4);
    }

    /// job.md scenario 9: the box is elsewhere, so only play that needs nothing from it is offered.
    void aBoxThatIsElsewhereIsNotPlayedWith()
    {
        QVERIFY(hand().tap(text("Box")));
        QVERIFY(hand().tap(text("Not here")));
        QVERIFY(hand().tap(text("Today")));
        const auto &catalogue = m_app->graph.household().catalogue();
        int offers = 0;
        for (const QString &name : hand().names().filter(text(". play "))) {
            for (const catalogue::Activity &activity : catalogue.activities()) {
                if (!name.startsWith(QString::fromStdString(activity.name)))
                    continue;
                ++offers;
                for (const catalogue::ItemUse &use : activity.items)
                    QVERIFY2(canDoWithoutTheBox(activity, use), qPrintable(name));
            }
        }
        QCOMPARE(offers, 3);
    }

    /// safety.md: latex allergy in the home hides balloons and rubber bands, and says why.
    void aNewAllergyActsAtOnce()
    {
        QVERIFY(hand().tap(text("Everything")));
        QVERIFY(!lineOf("Slow-Sky Taps").contains(text("latex")));
        QVERIFY(hand().tap(text("Back")));
        QVERIFY(hand().tap(text("Crew")));
        QVERIFY(hand().tap(text("Home sheet")));
        QVERIFY(hand().tap(text("Yes: Must anyone here avoid latex?")));
        QVERIFY(hand().reads(text("This is a latex-free home now")));
        QVERIFY(hand().tap(text("Back"))); // to the sheet: the rest is taken out later
        QVERIFY(hand().tap(text("Back")));
        QVERIFY(hand().tap(text("Today")));
        QVERIFY(hand().tap(text("Everything")));
        QVERIFY2(lineOf("Slow-Sky Taps").contains(text("latex")),
                 qPrintable(lineOf("Slow-Sky Taps")));
    }

    /// activities.md 1.4: a guest under three hides small parts, and the refusal names the guest.
    void aGuestUnderThreeChangesTheOffers()
    {
        QVERIFY(hand().tap(text("Who is here")));
        QVERIFY(hand().tap(text("A guest under three")));
        QVERIFY(hand().tap(text("That's")));
        QVERIFY(hand().tap(text("Everything")));
        QVERIFY2(lineOf("Five in the Hold").contains(text("under three")),
                 qPrintable(lineOf("Five in the Hold")));
        // The eyes have a swap that is not small: the play is let through with it, and says so.
        QVERIFY(hand().tap(text("Hidden Harbour Lights")));
        QVERIFY(m_app->graph.playInHand().active());
        QVERIFY(!m_app->graph.playInHand().cautions().has(catalogue::Tag::Small));
        QVERIFY2(hand().reads(text("Here, instead")), qPrintable(hand().words().join(u'|')));
    }

    void theKiteCanBeTurnedOffForGood()
    {
        QVERIFY(hand().tap(text("Crew")));
        QVERIFY(hand().tap(text("Settings")));
        QVERIFY(hand().tap(text("Offer the kite before play")));
        start();
        QVERIFY(hand().find(text("Kite")) == nullptr);
        QVERIFY(hand().find(text("My own guess")) == nullptr);
    }

    void aTextSizeIsKeptOverARestart()
    {
        const auto width = [this] { return hand().find(text("Three others"))->width(); };
        const qreal before = width();
        QVERIFY(hand().tap(text("Crew")));
        QVERIFY(hand().tap(text("Settings")));
        QVERIFY(hand().tap(text("Twice as large")));
        start();
        QVERIFY(width() > before);
    }

    /// checkin.md 6: a child's view is left by holding the adult control alone.
    void aShortTapDoesNotLeaveTheChildsView()
    {
        QVERIFY(hand().tap(text("Kite: not asked")));
        QVERIFY(hand().tap(text("adult: hold")));
        QVERIFY(hand().reads(text("What is your kite doing?")));
        QTest::keyClick(m_app->window, Qt::Key_Escape);
        Hand::settle();
        QVERIFY(hand().reads(text("What is your kite doing?")));
        QVERIFY(hand().hold(text("adult: hold")));
        QVERIFY(hand().reads(text("Play with Fin")));
    }

    /// checkin.md 5: after a kite in the clouds the adult comes first.
    void aKiteInTheCloudsGoesToTheAdultFirst()
    {
        QVERIFY(hand().tap(text("Kite: not asked")));
        QVERIFY(hand().tap(text("Clouds")));
        Hand::settle(800);
        QVERIFY(hand().hold(text("adult: hold")));
        QVERIFY(hand().find(text("Choose something")) != nullptr);
    }
};

QTEST_MAIN(TestBoxAndHomeOnScreen)
#include "tst_box_and_home_on_screen.moc"
