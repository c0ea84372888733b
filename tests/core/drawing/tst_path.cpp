#include <QImage>
#include <QPainter>
#include <QPainterPath>
#include <QSvgRenderer>
#include <QTest>
#include <QTransform>

#include "core/drawing/path.h"

#include <rapidcheck.h>

using namespace lidlark::drawing;

/// Paths are rewritten into absolute curves before they are moved. Whether that changes them is
/// judged by Qt Svg, which reads the first and the second writing alike.
class TestPath : public QObject
{
    Q_OBJECT

private slots:
    void aPathRewrittenLooksTheSame_data();
    void aPathRewrittenLooksTheSame();
    void anArcWithoutARadiusIsALine();
    void aPathMovedIsWhereQtMovesIt();
    void theAreaOfAnEllipse();
    void whatIsNoPathIsRefused_data();
    void whatIsNoPathIsRefused();
    void noTextCrashesTheReader();
    void aPlacementIsFlippedSizedTurnedThenLaid();
};

namespace {

QImage drawn(const QString &path)
{
    const QString svg =
        QStringLiteral("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 1000 500\">"
                       "<path d=\"%1\" fill=\"black\" stroke=\"black\" "
                       "stroke-width=\"4\"/></svg>")
            .arg(path);
    QSvgRenderer renderer(svg.toUtf8());
    QImage image(1000, 500, QImage::Format_Grayscale8);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    renderer.render(&painter);
    return image;
}

/// Pixels that are black in one picture and white in the other.
int differing(const QImage &one, const QImage &other)
{
    constexpr int clearly = 128;
    int count = 0;
    for (int y = 0; y < one.height(); ++y) {
        for (int x = 0; x < one.width(); ++x)
            count += std::abs(qGray(one.pixel(x, y)) - qGray(other.pixel(x, y))) > clearly ? 1 : 0;
    }
    return count;
}

} // namespace

void TestPath::aPathRewrittenLooksTheSame_data()
{
    QTest::addColumn<QString>("path");
    // Source: the examples of SVG 1.1 (W3C, 2011), sections 8.3.2, 8.3.6, 8.3.7 and 8.3.8, halved
    // where they are larger than our sheet.
    QTest::newRow("triangle") << "M 100 100 L 300 100 L 200 300 z";
    QTest::newRow("cubic") << "M100,200 C100,100 250,100 250,200 S400,300 400,200";
    QTest::newRow("quadratic") << "M200,300 Q400,50 600,300 T1000,300";
    QTest::newRow("pie, large") << "M300,200 h-150 a150,150 0 1,0 150,-150 z";
    QTest::newRow("pie, small") << "M275,175 v-150 a150,150 0 0,0 -150,150 z";
    QTest::newRow("wave of arcs") << "M600,350 l 50,-25 a25,25 -30 0,1 50,-25 l 50,-25 "
                                     "a25,50 -30 0,1 50,-25 l 50,-25 a25,75 -30 0,1 50,-25 "
                                     "l 50,-25 a25,100 -30 0,1 50,-25 l 50,-25";
    // Ours: what else the grammar of section 8.3.9 allows.
    QTest::newRow("numbers run together") << "M10-20L300.5.5L200,400Z";
    QTest::newRow("a move goes on as lines") << "m 50 50 200 0 0 200 -200 0 z m 300 0 100 0 0 100z";
    QTest::newRow("radii too small") << "M100,250 A10,20 30 0 1 700,250";
}

void TestPath::aPathRewrittenLooksTheSame()
{
    QFETCH(QString, path);
    const auto read = readPath(path.toStdString());
    QVERIFY(read);
    const QImage ours = drawn(QString::fromStdString(svgText(*read)));
    const QImage theirs = drawn(path);
    QVERIFY(differing(theirs, drawn(QStringLiteral("M0 0"))) > 500); // something is drawn
    QVERIFY2(differing(ours, theirs) <= 3, qPrintable(QString::number(differing(ours, theirs))));
}

void TestPath::anArcWithoutARadiusIsALine()
{
    // Source: SVG 1.1, F.6.2: "If either rx or ry is 0, then this arc is treated as a straight
    // line segment". Qt 6.4 draws something else there.
    const auto path = readPath("M100 100A0 20 0 0 1 700 250");
    QVERIFY(path);
    QCOMPARE(svgText(*path), std::string("M100 100C100 100 700 250 700 250"));
}

void TestPath::aPathMovedIsWhereQtMovesIt()
{
    const Affine ours = affineOf({{300, 200}, 35, {1.5, 0.5}, true, {20, 10}});
    const QTransform theirs =
        QTransform().translate(300, 200).rotate(35).scale(-1.5, 0.5).translate(-20, -10);
    for (const QPointF p : {QPointF(0, 0), QPointF(20, 10), QPointF(-7, 90)}) {
        const Point moved = ours({p.x(), p.y()});
        const QPointF expected = theirs.map(p);
        QVERIFY(std::abs(moved.x - expected.x()) < 1e-9);
        QVERIFY(std::abs(moved.y - expected.y()) < 1e-9);
    }
}

void TestPath::theAreaOfAnEllipse()
{
    // Area of an ellipse: pi a b. Four cubics are off by less than 0.03 % of it.
    QPainterPath path;
    for (const Segment &segment : ellipse({200, 100}, {150, 60})) {
        if (segment.command == 'M')
            path.moveTo(segment.points[0].x, segment.points[0].y);
        else if (segment.command == 'C')
            path.cubicTo(segment.points[0].x, segment.points[0].y, segment.points[1].x,
                         segment.points[1].y, segment.points[2].x, segment.points[2].y);
    }
    double area = 0;
    const QPolygonF polygon = path.toFillPolygon(QTransform::fromScale(50, 50));
    for (qsizetype i = 0; i + 1 < polygon.size(); ++i)
        area += polygon[i].x() * polygon[i + 1].y() - polygon[i + 1].x() * polygon[i].y();
    area = std::abs(area) / 2 / 2500;
    const double exact = M_PI * 150 * 60;
    QVERIFY2(std::abs(area / exact - 1) < 0.001, qPrintable(QString::number(area / exact)));
}

void TestPath::whatIsNoPathIsRefused_data()
{
    QTest::addColumn<QString>("path");
    QTest::newRow("nothing") << "";
    QTest::newRow("words") << "a hand";
    QTest::newRow("no move first") << "L 10 10";
    QTest::newRow("a number is missing") << "M 10 10 C 1 2 3 4 5";
    QTest::newRow("an unknown command") << "M 10 10 B 20 20";
    QTest::newRow("numbers after the end") << "M 10 10 L 20 20 Z 30 30";
    QTest::newRow("no number at all") << "M nan 10";
    QTest::newRow("without end") << "M inf 10";
    QTest::newRow("far away") << "M 10 10 H 1" + QString(99, '0');
    QTest::newRow("far away in two steps") << "M 9000 0 h 9000";
    QTest::newRow("nowhere") << "M 0 0 h 1" + QString(308, '0') + " h 1" + QString(308, '0');
}

void TestPath::whatIsNoPathIsRefused()
{
    QFETCH(QString, path);
    QVERIFY(!readPath(path.toStdString()));
}

void TestPath::noTextCrashesTheReader()
{
    const bool holds = rc::check("a text is a path or is refused", [] {
        const auto letters = *rc::gen::container<std::string>(
            rc::gen::elementOf(std::string("MmLlHhVvCcSsQqTtAaZz0123456789.,-+ e")));
        if (const auto path = readPath(letters))
            RC_ASSERT(readPath(svgText(*path)).has_value());
    });
    QVERIFY(holds);
}

void TestPath::aPlacementIsFlippedSizedTurnedThenLaid()
{
    // A quarter turn clockwise takes "right" to "down" (y runs down on a screen).
    const Affine quarter = affineOf({{100, 100}, 90, {1, 1}, false, {0, 0}});
    const Point down = quarter({10, 0});
    QVERIFY(std::abs(down.x - 100) < 1e-9);
    QVERIFY(std::abs(down.y - 110) < 1e-9);
    const Affine flipped = affineOf({{100, 100}, 90, {1, 1}, true, {0, 0}});
    QVERIFY(std::abs(flipped({10, 0}).y - 90) < 1e-9);
}

QTEST_GUILESS_MAIN(TestPath)
#include "tst_path.moc"
