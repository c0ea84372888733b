#include <QtTest>

#include <QTemporaryDir>
#include <QtQml/qqmlextensionplugin.h>

#include "core/usecase/write_demo.h"
#include "mobile/bridge/appearance.h"
#include "tests/tour/open_app.h"
#include "tests/tour/page_reading.h"

Q_IMPORT_QML_PLUGIN(Lidlark_AppPlugin)

using namespace lidlark;
using namespace lidlark::test;

/// Guards job.md scenario 11 through the real screens: Archie, 71, a guest for a week, 200 % text
/// on the smallest phone. How his code is typed belongs to the exchange between phones.
class TestScenario11OnScreen : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_folder;
    std::unique_ptr<OpenApp> m_app;

    [[nodiscard]] Hand hand() const { return m_app->hand(); }
    [[nodiscard]] QByteArray page() const { return hand().words().join(u'|').toUtf8(); }
    void openOn(const char *clock)
    {
        m_app.reset();
        m_app = std::make_unique<OpenApp>(m_folder.filePath(text("skye-grandad.lidlark")), clock);
        m_app->graph.appearance().tryOn(2, 0, true);
        m_app->window->resize(320, 568);
        Hand::settle(300);
    }
    /// Nothing on the page is cut, too small or beside the screen, and what goes on is in sight.
    void readPage(const char *mainControl) const
    {
        const QStringList hard = hardToRead(m_app->window);
        QVERIFY2(hard.isEmpty(), qPrintable(hard.join(u'\n')));
        QQuickItem *control = hand().find(text(mainControl));
        QVERIFY2(control != nullptr, page());
        const QRectF where = control->mapRectToScene(control->boundingRect());
        QVERIFY2(QRectF(QPointF(), m_app->window->size()).contains(where), mainControl);
    }
    [[nodiscard]] int crayons() const
    {
        return m_app->graph.household().boxItem({"crayons"})->row.low;
    }

private slots:
    void initTestCase()
    {
        wakeAccessibleTree();
        Hand::beQuick();
        QVERIFY(usecase::writeDemo(m_folder.path().toStdString(), 1, realCatalogue()).ok());
    }
    void cleanup() { m_app.reset(); }

    void threeOffersStandInAListAndNothingOfTheFamilysIsShown()
    {
        openOn("2027-01-15T16:00:00Z");
        const QStringList offers = hand().names().filter(text(". play "));
        QCOMPARE(offers.size(), 3);
        qreal below = -1;
        for (const QString &name : offers) { // one a row
            QQuickItem *offer = hand().find(name);
            const QRectF where = offer->mapRectToScene(offer->boundingRect());
            QVERIFY(where.top() > below);
            QVERIFY(where.width() > 280);
            below = where.bottom() - 1;
        }
        readPage("Today");
        QVERIFY(hand().find(text("Notebook")) == nullptr);
        QVERIFY(hand().find(text("The week ahead")) == nullptr);
        const auto family = m_app->graph.household().family();
        QVERIFY(family->child.goals.empty() && family->checkIns.empty() && family->plays.empty());
        QVERIFY(hand().tap(text("Crew")));
        QVERIFY2(hand().reads(text("A guest until 17 January")), page());
        QVERIFY(hand().find(text("Home sheet")) == nullptr);
    }

    void heMarksTheBrokenCrayonAndItIsSignedByHim()
    {
        openOn("2027-01-15T16:00:00Z");
        QCOMPARE(crayons(), 4);
        QVERIFY(hand().tap(text("Everything")));
        QVERIFY2(hand().tap(text("Two-Hand Tides")), page());
        readPage("Next step");
        QVERIFY2(!hand().names().filter(text("Easier")).isEmpty(), page());
        Hand::settle(3 * 1000); // he fetches his glasses: the page waits
        readPage("Next step");
        for (int step = 0; step < 4 && hand().find(text("Put back")) == nullptr; ++step)
            QVERIFY(hand().tap(text("Next step")));
        QVERIFY2(hand().tap(text("Put back")), page());
        readPage("All back in the box?");
        QVERIFY2(hand().reads(text("crayons")) || hand().reads(text("Short crayons")), page());
        QVERIFY(hand().tap(text("Something's different")));
        QVERIFY2(hand().tap(text("Short crayons: broken")), page());
        QVERIFY2(hand().tap(text("The rest is back")), page());
        QCOMPARE(crayons(), 3);
        QVERIFY(hand().tap(text("Done")));
        QVERIFY(hand().tap(text("Box")));
        readPage("Box");
        QVERIFY(hand().find(text("Count it all")) == nullptr);
        QVERIFY(hand().find(text("What to ask for")) == nullptr);
        QCOMPARE(m_app->graph.household().person(), text("Grandad"));
        const auto family = m_app->graph.household().family();
        QCOMPARE(family->plays.size(), std::size_t{1});
        QCOMPARE(family->plays.front().author, std::string("Grandad"));
    }

    void afterSevenDaysTheScreensAreShutAndWhatHeNotedStays()
    {
        openOn("2027-01-18T09:00:00Z");
        QVERIFY2(hand().reads(text("They ended on 17 January")), page());
        QVERIFY2(hand().reads(text("signed Grandad")), page());
        QVERIFY(hand().names().isEmpty());
        QCOMPARE(crayons(), 3);
    }
};

QTEST_MAIN(TestScenario11OnScreen)
#include "tst_scenario_11_on_screen.moc"
