#include <QRegularExpression>
#include <QSvgRenderer>
#include <QTest>

#include "core/drawing/compose.h"

using namespace lidlark::drawing;

/// What a file of marks comes to, and that a mistake in it is named with its file and line.
class TestCompose : public QObject
{
    Q_OBJECT

private slots:
    void everyKindOfMarkDraws_data();
    void everyKindOfMarkDraws();
    void theTintFallsOnlyWhereItIsAsked();
    void whatAHandHoldsLiesBetweenItsFingers();
    void aPersonIsOneOutline();
    void aMistakeIsNamedWithItsPlace_data();
    void aMistakeIsNamedWithItsPlace();
    void aRingOfPartsEnds();
    void aLeftHandedSceneExchangesTheHandsAndKeepsTheShift();
    void whatGoesOneWayHasNoLeftHandedScene();
};

namespace {

const char *pose = "anchor: [0, 0]\n"
                   "wrist: [40, 0]\n"
                   "far: [100, 0]\n"
                   "palm: \"M20 -10H50V10H20Z\"\n"
                   "draw:\n"
                   "- palm\n"
                   "- fingers: [\"M20 -5L0 0\"]\n"
                   "- holds\n"
                   "- fingers: [\"M20 5L0 0\"]\n";

/// A scene of these marks, with a hand "grasp", a part "cap" and an item "tub" at hand.
std::vector<DrawingFile> filesWith(const QString &marks)
{
    return {{Kind::Hand, "grasp", pose},
            {Kind::Part, "cap", "draw:\n- body: {circle: [0, 0, 10]}\n  tint: asked\n"},
            {Kind::Item, "tub", "draw:\n- body: {box: [20, 20, 56, 56, 4]}\n  tint: asked\n"},
            {Kind::Part, "ring", "draw:\n- part: ring\n"},
            {Kind::Part, "torn", "draw:\n- line: \"M0 0L5 5\"\n- line: \"L5 5\"\n"},
            {Kind::Scene, "s", ("draw:\n" + marks).toStdString()}};
}

QString composed(const QString &marks)
{
    const Shelf shelf(filesWith(marks));
    const auto svg = compose(shelf, Kind::Scene, "s");
    if (const auto *fault = std::get_if<Fault>(&svg))
        return QString::fromStdString(fault->text());
    return QString::fromStdString(std::get<std::string>(svg));
}

qsizetype count(const QString &svg, const QString &what)
{
    return svg.count(what);
}

} // namespace

void TestCompose::everyKindOfMarkDraws_data()
{
    QTest::addColumn<QString>("marks");
    QTest::addColumn<int>("paths");
    QTest::newRow("body") << "- body: \"M0 0H9V9Z\"\n" << 2;
    QTest::newRow("tinted body") << "- body: \"M0 0H9V9Z\"\n  tint: true\n" << 3;
    QTest::newRow("line") << "- line: {points: [[0, 0], [9, 9]]}\n" << 1;
    QTest::newRow("detail") << "- detail: \"M0 0H9\"\n" << 1;
    QTest::newRow("motion") << "- motion: \"M0 0H9\"\n" << 1;
    QTest::newRow("dots") << "- dots: \"M0 0H9\"\n" << 1;
    QTest::newRow("fill") << "- fill: {ellipse: [0, 0, 9, 5]}\n  colour: ink\n" << 1;
    QTest::newRow("bone") << "- bone: \"M0 0H9\"\n  width: 13\n" << 2;
    QTest::newRow("arrow") << "- arrow: \"M0 0Q9 0 9 9\"\n" << 2;
    QTest::newRow("outline")
        << "- outline:\n  - {area: \"M0 0H9V9Z\"}\n  - {limb: \"M0 0H9\", width: 20}\n"
        << 4;
    QTest::newRow("near table") << "- table: 206\n" << 3;
    QTest::newRow("far table") << "- table: 100\n" << 1;
    QTest::newRow("floor") << "- floor: 206\n" << 1;
    QTest::newRow("part") << "- part: cap\n  at: [9, 9]\n" << 2;
    QTest::newRow("item") << "- item: tub\n  size: [1, 2]\n" << 2;
    QTest::newRow("group") << "- group:\n  - line: \"M0 0H9\"\n  turn: 20\n" << 1;
    QTest::newRow("hand") << "- hand: grasp\n  at: [99, 99]\n" << 9;
    QTest::newRow("person") << "- person: {head: [50, 20], trunk: [[50, 60], [50, 90]], "
                               "joined: [{leg: [[50, 90], [50, 130]]}]}\n"
                            << 8;
}

void TestCompose::everyKindOfMarkDraws()
{
    QFETCH(QString, marks);
    QFETCH(int, paths);
    const QString svg = composed(marks);
    QVERIFY2(QSvgRenderer(svg.toUtf8()).isValid(), qPrintable(svg));
    QCOMPARE(count(svg, "<path"), paths);
}

void TestCompose::theTintFallsOnlyWhereItIsAsked()
{
    QCOMPARE(count(composed("- part: cap\n"), "#EFBF72"), 0);
    QCOMPARE(count(composed("- part: cap\n  tint: true\n"), "#EFBF72"), 1);
    // Off register to the lower right, also when the part is turned over (look.md, section 5): the
    // circle begins at its left end, (-10, 0), which comes to lie at (10, 0).
    const QString flipped = composed("- part: cap\n  tint: true\n  flip: true\n");
    QVERIFY2(flipped.contains("M15 5"), qPrintable(flipped));
}

void TestCompose::whatAHandHoldsLiesBetweenItsFingers()
{
    const QString svg = composed("- hand: grasp\n  holds:\n  - fill: {circle: [1, 2, 3]}\n");
    const qsizetype held = svg.indexOf("M-2 2");
    const qsizetype behind = svg.indexOf("M20 -5L0 0");
    const qsizetype before = svg.indexOf("M20 5L0 0");
    QVERIFY(behind >= 0 && held > behind && before > held);
}

void TestCompose::aPersonIsOneOutline()
{
    // All ink comes before all paper, so that no line runs through where limbs meet.
    const QString svg = composed("- person: {head: [50, 20], trunk: [[50, 60], [50, 90]], "
                                 "joined: [{arm: [[50, 60], [90, 60]]}]}\n");
    const qsizetype lastInk = svg.indexOf("stroke=\"#26211B\" stroke-width=\"13\"");
    const qsizetype firstPaper = svg.indexOf("#FFFBF2");
    QVERIFY(lastInk >= 0);
    QVERIFY(firstPaper > lastInk);
}

void TestCompose::aMistakeIsNamedWithItsPlace_data()
{
    QTest::addColumn<QString>("marks");
    QTest::addColumn<QString>("message");
    QTest::newRow("mark") << "- circle: [1, 2, 3]\n"
                          << "scenes/s.yaml:2: there is no mark \"circle\"";
    QTest::newRow("hand") << "- floor: 9\n- hand: graps\n"
                          << "scenes/s.yaml:3: there is no hand \"graps\"";
    QTest::newRow("part") << "- part: cup\n"
                          << "scenes/s.yaml:2: there is no part \"cup\"";
    QTest::newRow("item") << "- item: cup\n"
                          << "scenes/s.yaml:2: there is no item \"cup\"";
    QTest::newRow("field") << "- line: \"M0 0H9\"\n  colr: ink\n"
                           << "scenes/s.yaml:3: \"colr\" is unknown here";
    QTest::newRow("path") << "- line: \"L5 5\"\n"
                          << "scenes/s.yaml:2: this is no path";
    QTest::newRow("inside a part") << "- part: torn\n"
                                   << "parts/torn.yaml:3: this is no path";
    QTest::newRow("number") << "- floor: low\n"
                            << "scenes/s.yaml:2: must be a number";
    QTest::newRow("place") << "- part: cap\n  at: [1]\n"
                           << "scenes/s.yaml:3: a place is two numbers";
    QTest::newRow("colour") << "- fill: \"M0 0H9V9Z\"\n  colour: red\n"
                            << "scenes/s.yaml:3: a colour is ink, tint or paper";
    QTest::newRow("far away") << "- floor: 1e300\n"
                              << "scenes/s.yaml:2: must be a number";
    QTest::newRow("yes or no") << "- part: cap\n  flip: yes\n"
                               << "scenes/s.yaml:3: must be true or false";
}

void TestCompose::aMistakeIsNamedWithItsPlace()
{
    QFETCH(QString, marks);
    QFETCH(QString, message);
    QCOMPARE(composed(marks), message);
}

void TestCompose::aRingOfPartsEnds()
{
    QCOMPARE(composed("- part: ring\n"),
             "parts/ring.yaml:2: parts are nested too deeply, or in a ring");
}

void TestCompose::aLeftHandedSceneExchangesTheHandsAndKeepsTheShift()
{
    // The middle of a scene is at x = 160: a cap at 100 comes to lie at 220, its tint still 5 to
    // the right and 5 down.
    const Shelf shelf(filesWith("- part: cap\n  at: [100, 50]\n  tint: true\n"));
    QVERIFY(hasLeftHanded(shelf, "s"));
    const auto drawn = composeLeftHanded(shelf, "s");
    const QString svg = QString::fromStdString(std::get<std::string>(drawn));
    QVERIFY2(svg.contains("M230 50"), qPrintable(svg));
    QVERIFY2(svg.contains("M235 55"), qPrintable(svg));
}

void TestCompose::whatGoesOneWayHasNoLeftHandedScene()
{
    const std::vector<DrawingFile> files{
        {Kind::Scene, "s", "one_way: scissors are made for one hand\ndraw:\n- floor: 9\n"}};
    const Shelf shelf(files);
    QVERIFY(std::holds_alternative<std::string>(compose(shelf, Kind::Scene, "s")));
    QVERIFY(!hasLeftHanded(shelf, "s"));
    QVERIFY(std::holds_alternative<Fault>(composeLeftHanded(shelf, "s")));
    QVERIFY(!hasLeftHanded(shelf, "nothing"));
}

QTEST_GUILESS_MAIN(TestCompose)
#include "tst_compose.moc"
