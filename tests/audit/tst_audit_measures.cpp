#include <QtTest>

#include <QPainter>

#include <QtQml/qqmlextensionplugin.h>

#include "tests/audit/ink.h"
#include "tests/audit/look_check.h"
#include "tests/audit/made_up.h"
#include "tests/audit/touch_check.h"
#include "tests/audit/words_check.h"
#include "tests/support/contrast.h"
#include "tests/tour/hand.h"

Q_IMPORT_QML_PLUGIN(Lidlark_DesignPlugin)

using namespace lidlark;
using namespace lidlark::audit;

namespace {

/// A control with a frame, a word and the size that is asked for.
QByteArray button(const QByteArray &id, const QByteArray &size = "width: 120; height: 48",
                  const QByteArray &text = "Go on",
                  const QByteArray &frame = "border.color: 'black'")
{
    return "T.AbstractButton { id: " + id + "; " + size + "; text: '" + text +
           "'\nproperty bool picked: false\nAccessible.name: text\n"
           "contentItem: Text { text: " +
           id +
           ".text; font.pixelSize: 16 }\n"
           "background: Rectangle { border.width: 2; " +
           frame + " } }\n";
}

} // namespace

/// Guards the measures of the audit: each finds what it is there for, on a page made up to fail,
/// and finds nothing on the same page put right.
class TestAuditMeasures : public QObject
{
    Q_OBJECT

private slots:
    void initTestCase() { test::wakeAccessibleTree(); }

    void theFormulaGivesKnownRatios_data()
    {
        QTest::addColumn<QColor>("one");
        QTest::addColumn<QColor>("other");
        QTest::addColumn<double>("ratio");
        // Source: WCAG 2.2, definition "contrast ratio": from 1 to 21.
        QTest::newRow("black on white") << QColor(Qt::black) << QColor(Qt::white) << 21.0;
        QTest::newRow("white on white") << QColor(Qt::white) << QColor(Qt::white) << 1.0;
        // Source: davidmacd.com/test/check-color.html, which reports what a row of contrast tools
        // compute for it, and the Working Group's word of 27 October 2016 that 4.5 is not rounded.
        QTest::newRow("#777777 on white") << QColor(0x77, 0x77, 0x77) << QColor(Qt::white) << 4.48;
        // Source: github.com/kreshikhin/ColorfulSwift/wiki/Contrast, its table of samples.
        QTest::newRow("#767676 on white") << QColor(0x76, 0x76, 0x76) << QColor(Qt::white) << 4.54;
        QTest::newRow("yellow on white") << QColor("yellow") << QColor(Qt::white) << 1.07;
    }
    void theFormulaGivesKnownRatios()
    {
        QFETCH(QColor, one);
        QFETCH(QColor, other);
        QFETCH(double, ratio);
        QVERIFY2(std::abs(test::contrastRatio(one, other) - ratio) < 0.005,
                 qPrintable(QString::number(test::contrastRatio(one, other))));
    }

    /// The same two greys, but as letters on a page: one step lighter is found, the other is not.
    void theRatioIsReadFromTheLetters_data()
    {
        QTest::addColumn<QByteArray>("colour");
        QTest::addColumn<QByteArray>("size");
        QTest::addColumn<bool>("faint");
        QTest::newRow("4.54") << QByteArray("#767676") << QByteArray("14") << false;
        QTest::newRow("4.48") << QByteArray("#777777") << QByteArray("14") << true;
        QTest::newRow("4.48, but large") << QByteArray("#777777") << QByteArray("24") << false;
        QTest::newRow("2.85, and large") << QByteArray("#999999") << QByteArray("24") << true;
        QTest::newRow("4.48, bold, almost large")
            << QByteArray("#777777") << QByteArray("18; font.bold: true") << true;
        QTest::newRow("4.48, bold and large")
            << QByteArray("#777777") << QByteArray("19; font.bold: true") << false;
    }
    void theRatioIsReadFromTheLetters()
    {
        QFETCH(QByteArray, colour);
        QFETCH(QByteArray, size);
        QFETCH(bool, faint);
        const MadeUp page("Text { x: 20; y: 20; text: 'Three lights, HILT'; color: '" + colour +
                          "'; font.pixelSize: " + size + " }");
        QVERIFY2(page.faintWords().isEmpty() != faint, qPrintable(page.faintWords().join(u'\n')));
    }

    void wordsAreFaintWhereTheirWorstGroundIs()
    {
        const MadeUp half("Rectangle { width: 90; height: 90; color: '#333333' }\n"
                          "Text { x: 20; y: 20; text: 'Half and half of it'; color: 'black'\n"
                          "font.pixelSize: 16 }");
        QVERIFY(half.faintWords().join(u' ').contains(QStringLiteral("faint words")));
    }

    void wordsThatAreCovered()
    {
        const QByteArray word = "Text { x: 20; y: 20; text: 'Below'; font.pixelSize: 16 }";
        QVERIFY(MadeUp(word).faintWords().isEmpty());
        const MadeUp covered(word + "Rectangle { width: 200; height: 90; color: 'white' }");
        QVERIFY(covered.faintWords().join(u' ').contains(QStringLiteral("never seen")));
    }

    void wordsThatCannotBeRead_data()
    {
        QTest::addColumn<QByteArray>("body");
        QTest::addColumn<QString>("why");
        QTest::newRow("all well")
            << QByteArray("Text { text: 'Put back'; width: 200; wrapMode: Text.Wrap }")
            << QString();
        QTest::newRow("cut short")
            << QByteArray("Text { text: 'Put everything back'; width: 60; elide: Text.ElideRight }")
            << QStringLiteral("cut short");
        QTest::newRow("wider") << QByteArray("Text { text: 'Put everything back'; width: 60 }")
                               << QStringLiteral("wider than its place");
        QTest::newRow("taller")
            << QByteArray("Text { text: 'Put everything back in'; width: 60; height: 20\n"
                          "wrapMode: Text.Wrap }")
            << QStringLiteral("taller than its place");
        QTest::newRow("a broken word")
            << QByteArray("Text { text: 'Put everything back'; width: 40; wrapMode: Text.Wrap }")
            << QStringLiteral("a word is broken");
        QTest::newRow("beside the screen") << QByteArray("Text { x: 340; text: 'Put back' }")
                                           << QStringLiteral("beside the screen");
        QTest::newRow("clipped by what it lies in")
            << QByteArray("Item { width: 200; height: 30; clip: true\n"
                          "Item { width: 200; height: 90\nText { y: 20; text: 'Put back' } } }")
            << QStringLiteral("clipped");
        QTest::newRow("below the end of what scrolls")
            << QByteArray("Flickable { width: 200; height: 90; contentHeight: 200\n"
                          "Text { y: 210; text: 'Put back' } }")
            << QStringLiteral("cannot be scrolled to");
        QTest::newRow("scrolled to")
            << QByteArray("Flickable { width: 200; height: 90; contentHeight: 240\n"
                          "Text { y: 210; text: 'Put back' } }")
            << QString();
        QTest::newRow("in something that does not scroll")
            << QByteArray("Flickable { width: 200; height: 90; contentHeight: 240\n"
                          "interactive: false; Text { y: 210; text: 'Put back' } }")
            << QStringLiteral("does not scroll");
        QTest::newRow("a slit") << QByteArray(
                                       "Flickable { width: 200; height: 30; contentHeight: 240\n"
                                       "Text { y: 10; text: 'Put back' } }")
                                << QStringLiteral("slit of 30");
        QTest::newRow("on each other")
            << QByteArray("Text { text: 'Put back' } Text { y: 8; text: 'Stop here' }")
            << QStringLiteral("words on words");
        QTest::newRow("a plural left open")
            << QByteArray("Text { text: '2 piece(s)' }") << QStringLiteral("one or many");
    }
    void wordsThatCannotBeRead()
    {
        QFETCH(QByteArray, body);
        QFETCH(QString, why);
        const MadeUp page(body);
        const QString found = checkWords(page.page()).join(u'\n');
        QVERIFY2(why.isEmpty() ? found.isEmpty() : found.contains(why), qPrintable(found));
    }

    void whatCannotBeTouched_data()
    {
        QTest::addColumn<QByteArray>("body");
        QTest::addColumn<QString>("why");
        const QByteArray one = button("one");
        QTest::newRow("all well") << one + button("two", "y: 60; width: 120; height: 48")
                                  << QString();
        QTest::newRow("small") << button("one", "width: 120; height: 40")
                               << QStringLiteral("small target, 120.0 x 40");
        QTest::newRow("scaled down")
            << QByteArray("Item { scale: 0.9\n" + one + "}") << QStringLiteral("small target");
        QTest::newRow("on each other") << one + button("two", "y: 44; width: 120; height: 48")
                                       << QStringLiteral("targets on each other");
        QTest::newRow("words on it") << one + "Text { x: 60; y: 10; text: 'Stop here' }"
                                     << QStringLiteral("words on a control");
        QTest::newRow("no name") << button("one", "width: 120; height: 48", "")
                                 << QStringLiteral("has no name");
        QTest::newRow("an area without a name")
            << QByteArray("MouseArea { width: 100; height: 100 }") << QStringLiteral("has no name");
        QTest::newRow("beside the screen") << button("one", "x: 300; width: 120; height: 48")
                                           << QStringLiteral("beside the screen");
    }
    void whatCannotBeTouched()
    {
        QFETCH(QByteArray, body);
        QFETCH(QString, why);
        const MadeUp page(body);
        const QString found = checkTouch(page.page()).join(u'\n');
        QVERIFY2(why.isEmpty() ? found.isEmpty() : found.contains(why), qPrintable(found));
    }

    /// checkin.md 10: 20 mm, on the smallest phone 16, and 4 mm between the kite's.
    void whatAChildsFingerWouldMiss_data()
    {
        QTest::addColumn<int>("height");
        QTest::addColumn<int>("gap");
        QTest::addColumn<QString>("why");
        // 6 px for one mm; the page is higher than the smallest phone.
        QTest::newRow("20 mm, 4 between") << 120 << 24 << QString();
        QTest::newRow("19 mm") << 114 << 24 << QStringLiteral("19.0 mm for a child's finger");
        QTest::newRow("3 mm between") << 120 << 18 << QStringLiteral("3.0 mm between");
    }
    void whatAChildsFingerWouldMiss()
    {
        QFETCH(int, height);
        QFETCH(int, gap);
        QFETCH(QString, why);
        const QByteArray tile = "ChildTile { objectName: 'kite-%1'; y: %2; width: 300; height: %3\n"
                                "text: 'Clouds' }\n";
        const QString body = QString::fromUtf8(tile).arg(1).arg(0).arg(height) +
                             QString::fromUtf8(tile).arg(2).arg(height + gap).arg(height);
        const MadeUp page(body.toUtf8(), "white", "import Lidlark.Design\n");
        const QString found = checkChildsTouch(page.page(), 6.0).join(u'\n');
        QVERIFY2(why.isEmpty() ? found.isEmpty() : found.contains(why), qPrintable(found));
    }

    /// Of a control that is only a word nothing shows that it can be touched; of one with a frame
    /// in almost the colour of the page no more.
    void whatDoesNotLookTouchable_data()
    {
        QTest::addColumn<QByteArray>("frame");
        QTest::addColumn<bool>("found");
        QTest::newRow("a black frame") << QByteArray("border.color: 'black'") << false;
        QTest::newRow("3.03") << QByteArray("border.color: '#949494'") << false;
        QTest::newRow("2.85") << QByteArray("border.color: '#999999'") << true;
        QTest::newRow("a frame nobody sees") << QByteArray("border.color: 'white'") << true;
    }
    void whatDoesNotLookTouchable()
    {
        QFETCH(QByteArray, frame);
        QFETCH(bool, found);
        const MadeUp page(button("one", "x: 20; y: 20; width: 120; height: 48", "Go on", frame));
        QCOMPARE(!checkParts(page.page()).isEmpty(), found);
    }

    /// Red and the green of the same lightness: told apart in colour, alike in grey.
    void whatIsChosenByHueAlone_data()
    {
        QTest::addColumn<QByteArray>("chosen");
        QTest::addColumn<QByteArray>("other");
        QTest::addColumn<bool>("found");
        QTest::newRow("hue alone") << QByteArray("#c00000") << QByteArray("#006b00") << true;
        QTest::newRow("light and dark") << QByteArray("#003347") << QByteArray("#ffffff") << false;
    }
    void whatIsChosenByHueAlone()
    {
        QFETCH(QByteArray, chosen);
        QFETCH(QByteArray, other);
        QFETCH(bool, found);
        const MadeUp page(button("one", "x: 20; y: 20; width: 120; height: 48", "Go on",
                                 "color: one.picked ? '" + chosen + "' : '" + other + "'"));
        QCOMPARE(!checkChosen(page.page()).isEmpty(), found);
    }
};

QTEST_MAIN(TestAuditMeasures)
#include "tst_audit_measures.moc"
