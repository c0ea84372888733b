#include "dashes.h"
#include "drawing_shelf.h"
#include "theme.h"
#include "type_roles.h"

#include <QtTest/QSignalSpy>
#include <QtTest/QTest>

using namespace lidlark::design;

class TestDesignValues : public QObject
{
    Q_OBJECT
private slots:
    void textGrowsByItsScaleAndTitlesByLess();
    void noTextIsUnderFourteen();
    void naskhHasTallerLinesAndNoSmallBold();
    void reducedMotionTakesAwayAllTimesButTheHold();
    void childSizesNeverShrinkUnderTheFloor_data();
    void childSizesNeverShrinkUnderTheFloor();
    void textScaleIsHeldBetweenOneAndTwo();
    void aNewPlaceChangesTheColoursOnce();
    void stitchesEndInAWholeStitch();
    void drawingsTakeOnTheColoursOfTheLook();
    void aMissingDrawingIsAnEmptyPicture();
};

// Source: the project's own look page (reference/look/look.md, section 2).
void TestDesignValues::textGrowsByItsScaleAndTitlesByLess()
{
    QCOMPARE(scaledRunning(16.0, 2.0), 32.0);
    QCOMPARE(scaledTitle(26.0, 1.0), 26.0);
    QCOMPARE(scaledTitle(26.0, 1.5), 26.0 * 1.31);
    QCOMPARE(scaledTitle(26.0, 2.0), 26.0 * 1.62);
    QCOMPARE(typeStyle(ThemeChoices::Body, false, {2.0, false}).font.pixelSize(), 32);
    QCOMPARE(typeStyle(ThemeChoices::Title, true, {2.0, false}).font.pixelSize(), 42);
}

// Source: reference/look/look.md, section 2: nothing under 14.
void TestDesignValues::noTextIsUnderFourteen()
{
    for (int role = ThemeChoices::BigYes; role <= ThemeChoices::Number; ++role) {
        const TypeStyle style = typeStyle(static_cast<ThemeChoices::Role>(role), false, {});
        QVERIFY2(style.font.pixelSize() >= 14, qPrintable(QString::number(role)));
        QVERIFY(style.lineHeight > style.font.pixelSize());
    }
}

// Source: reference/look/look.md, section 2: line x 1.26, no bold below 16.
void TestDesignValues::naskhHasTallerLinesAndNoSmallBold()
{
    const TypeStyle latin = typeStyle(ThemeChoices::Caption, true, {1.0, false});
    const TypeStyle naskh = typeStyle(ThemeChoices::Caption, true, {1.0, true});
    QCOMPARE(naskh.lineHeight, std::round(latin.lineHeight * 1.26));
    QVERIFY(latin.font.bold());
    QVERIFY(!naskh.font.bold());
    QVERIFY(typeStyle(ThemeChoices::Label, true, {1.0, true}).font.bold());
}

void TestDesignValues::reducedMotionTakesAwayAllTimesButTheHold()
{
    Theme theme;
    QVERIFY(theme.pressMs() > 0);
    theme.setReducedMotion(true);
    QCOMPARE(theme.pressMs() + theme.pegMs() + theme.homeMs() + theme.pageMs(), 0);
    // Source: reference/look/look.md, section 7: held 1.2 s.
    QCOMPARE(theme.property("holdMs").toInt(), 1200);
}

void TestDesignValues::childSizesNeverShrinkUnderTheFloor_data()
{
    QTest::addColumn<double>("screenDots");
    QTest::addColumn<int>("kite");
    QTest::newRow("a desktop screen") << 3.78 << 126;
    QTest::newRow("the small phone the floor comes from") << 6.3 << 126;
    QTest::newRow("a finer phone") << 7.0 << 140;
    QTest::newRow("a screen that says nothing") << 0.0 << 126;
    QTest::newRow("a screen that misread its size") << 60.0 << 126;
}

// Source: reference/look/look.md, section 3: 6.3 px = 1 mm at 320 x 568, use the larger.
void TestDesignValues::childSizesNeverShrinkUnderTheFloor()
{
    QFETCH(double, screenDots);
    Theme theme;
    theme.setScreenDotsPerMm(screenDots);
    QTEST(theme.mm(20.0), "kite");
}

void TestDesignValues::textScaleIsHeldBetweenOneAndTwo()
{
    Theme theme;
    theme.setTextScale(9.0);
    QCOMPARE(theme.textScale(), 2.0);
    QVERIFY(theme.largeText());
    theme.setTextScale(0.1);
    QCOMPARE(theme.textScale(), 1.0);
    QVERIFY(!theme.largeText());
}

void TestDesignValues::aNewPlaceChangesTheColoursOnce()
{
    Theme theme;
    QSignalSpy changed(&theme, &Theme::coloursChanged);
    const QColor before = theme.cloth();
    theme.setPlace(Theme::School);
    theme.setPlace(Theme::School);
    QCOMPARE(changed.count(), 1);
    QVERIFY(theme.cloth() != before);
    QCOMPARE(theme.clothOf(Theme::Home, Theme::Light), before);
}

void TestDesignValues::stitchesEndInAWholeStitch()
{
    for (const double length : {41.0, 100.0, 328.0}) {
        const Dashes open = fittedOpen({6.0, 5.0}, length);
        const double gaps = (length - open.on) / (open.on + open.off);
        QVERIFY(qAbs(gaps - std::round(gaps)) < 1e-6);
        const Dashes closed = fittedClosed({6.0, 5.0}, length);
        const double count = length / (closed.on + closed.off);
        QVERIFY(qAbs(count - std::round(count)) < 1e-6);
    }
}

void TestDesignValues::drawingsTakeOnTheColoursOfTheLook()
{
    // Ink becomes what paper was: exchanging one after the other would lose a colour.
    const DrawingColours colours{QColor(0xff, 0xfb, 0xf2), QColor(1, 2, 3), QColor(4, 5, 6)};
    const QRectF area = drawingArea("three-colours");
    QCOMPARE(area, QRectF(0.0, 0.0, 30.0, 10.0));
    const QImage picture = drawingPicture({"three-colours", area, {30, 10}, colours});
    QCOMPARE(picture.pixelColor(5, 5), colours.ink);
    QCOMPARE(picture.pixelColor(15, 5), colours.tint);
    QCOMPARE(picture.pixelColor(25, 5), colours.paper);
}

void TestDesignValues::aMissingDrawingIsAnEmptyPicture()
{
    QVERIFY(!hasDrawing("no-such-drawing"));
    QVERIFY(drawingArea("no-such-drawing").isEmpty());
    QVERIFY(drawingPicture({"no-such-drawing", {0, 0, 9, 9}, {9, 9}, {}}).isNull());
}

QTEST_MAIN(TestDesignValues)
#include "tst_design_values.moc"
