#include "palette.h"

#include "tests/support/contrast.h"

#include <QtTest/QTest>

using namespace lidlark::design;
using lidlark::test::contrastRatio;

namespace {

QColor laidOver(const QColor &top, const QColor &ground)
{
    const float share = top.alphaF();
    const auto mix = [share](float a, float b) { return a * share + b * (1.0F - share); };
    return QColor::fromRgbF(mix(top.redF(), ground.redF()), mix(top.greenF(), ground.greenF()),
                            mix(top.blueF(), ground.blueF()));
}

struct Pair {
    const char *name;
    QColor front;
    QColor ground;
};

QList<Pair> textPairs(const Palette &look)
{
    const QColor wovenCloth = laidOver(look.weave, look.cloth);
    return {
        {"ink on sheet", look.ink, look.sheet},
        {"ink on card", look.ink, look.card},
        {"ink on lining", look.ink, look.lining},
        {"soft on sheet", look.inkSoft, look.sheet},
        {"soft on card", look.inkSoft, look.card},
        {"soft on lining", look.inkSoft, look.lining},
        {"text on picture", look.pictureText, look.picture},
        {"soft on picture", look.pictureSoft, look.picture},
        {"text on slip", look.slipText, look.slip},
        {"soft on slip", look.slipSoft, look.slip},
        {"text on caution", look.safetyText, look.safety},
        {"answer on caution", look.safety, look.safetyText},
        {"text on cloth", look.clothText, look.cloth},
        {"text on a thread", look.clothText, wovenCloth},
        {"text on chosen", look.chosenText, look.chosen},
        {"text in a well", look.wellText, look.well},
        {"link on sheet", look.accent, look.sheet},
        {"link on card", look.accent, look.card},
        {"word on tag", look.drawingInk, look.tint},
        {"drawing line on picture", look.drawingInk, look.picture},
        {"drawing line on its paper", look.drawingInk, look.drawingPaper},
        {"drawing line in a well", look.drawingInk, look.well},
    };
}

QList<Pair> partPairs(const Palette &look)
{
    return {
        {"edge of a button on sheet", look.line, look.sheet},
        {"edge of a button on card", look.line, look.card},
        {"focus ring on sheet", look.ink, look.sheet},
        {"focus ring on cloth", look.clothText, look.cloth},
        {"slip on cloth", look.slip, look.cloth},
        {"caution on sheet", look.safety, look.sheet},
        {"caution on card", look.safety, look.card},
        {"chosen chip on sheet", look.chosen, look.sheet},
        {"chosen chip on card", look.chosen, look.card},
        {"minute stroke on card", look.accent, look.card},
        {"rim of the tray on sheet", look.ink, look.sheet},
        {"line on the tint", look.drawingInk, look.tint},
        {"edge of a place on the lining", look.ink, look.lining},
    };
}

} // namespace

class TestDesignContrast : public QObject
{
    Q_OBJECT
private slots:
    void theFormulaGivesItsEnds();
    void textIsReadable_data();
    void textIsReadable();
    void partsAreSeen_data();
    void partsAreSeen();
};

static void addLooks()
{
    QTest::addColumn<int>("scheme");
    QTest::addColumn<int>("place");
    const QList<const char *> schemes{"light", "dark", "high contrast"};
    const QList<const char *> places{"home", "second home", "school", "away"};
    for (int scheme = 0; scheme < schemes.size(); ++scheme) {
        for (int place = 0; place < places.size(); ++place)
            QTest::addRow("%s, %s", schemes.at(scheme), places.at(place)) << scheme << place;
    }
}

static Palette chosenLook(int scheme, int place)
{
    return paletteFor(static_cast<ThemeChoices::Scheme>(scheme),
                      static_cast<ThemeChoices::Place>(place));
}

static void compareAll(const QList<Pair> &pairs, double least)
{
    for (const Pair &pair : pairs) {
        const double ratio = contrastRatio(pair.front, pair.ground);
        QVERIFY2(ratio >= least, qPrintable(QStringLiteral("%1: %2 of %3")
                                                .arg(QLatin1String(pair.name))
                                                .arg(ratio)
                                                .arg(least)));
    }
}

// Source: WCAG 2.2, definition "contrast ratio": ratios range from 1 to 21.
void TestDesignContrast::theFormulaGivesItsEnds()
{
    QCOMPARE(contrastRatio(Qt::black, Qt::white), 21.0);
    QCOMPARE(contrastRatio(Qt::white, Qt::white), 1.0);
}

void TestDesignContrast::textIsReadable_data()
{
    addLooks();
}

// Source: WCAG 2.2, success criterion 1.4.3 Contrast (Minimum): 4.5 for text.
void TestDesignContrast::textIsReadable()
{
    QFETCH(int, scheme);
    QFETCH(int, place);
    compareAll(textPairs(chosenLook(scheme, place)), 4.5);
}

void TestDesignContrast::partsAreSeen_data()
{
    addLooks();
}

// Source: WCAG 2.2, success criterion 1.4.11 Non-text Contrast: 3 for parts of a control.
void TestDesignContrast::partsAreSeen()
{
    QFETCH(int, scheme);
    QFETCH(int, place);
    compareAll(partPairs(chosenLook(scheme, place)), 3.0);
}

QTEST_GUILESS_MAIN(TestDesignContrast)
#include "tst_design_contrast.moc"
