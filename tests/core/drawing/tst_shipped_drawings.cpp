#include <QImage>
#include <QPainter>
#include <QRegularExpression>
#include <QSvgRenderer>
#include <QTest>

#include "core/drawing/compose.h"
#include "tests/core/catalogue/shipped_catalogue.h"
#include "tests/support/shipped_drawings.h"

#include <set>

using namespace lidlark;
using namespace lidlark::drawing;

/// The drawings we ship, against the rules of look.md section 5 that a program can see.
class TestShippedDrawings : public QObject
{
    Q_OBJECT

private slots:
    void initTestCase();
    void everyDrawingComposes();
    void threeColoursAndNoOther();
    void somethingIsTinted();
    void theMiddleCarriesTheMeaning();
    void everyDrawingIsUsed();
    void everyDrawingNamedIsThere();
    void everyHandAndPartIsUsed();
    void scissorsGoOneWay();

private:
    std::map<QString, QByteArray> m_svgs; ///< By the name the catalogue uses.
};

void TestShippedDrawings::initTestCase()
{
    const Shelf shelf = shipped::drawings();
    for (const Fault &fault : shelf.faults())
        QFAIL(fault.text().c_str());
    for (const auto &[kind, prefix] :
         {std::pair{Kind::Item, "item-"}, std::pair{Kind::Scene, "scene-"}}) {
        for (const std::string &name : shelf.names(kind)) {
            const auto svg = compose(shelf, kind, name);
            if (const auto *fault = std::get_if<Fault>(&svg))
                QFAIL(fault->text().c_str());
            m_svgs[prefix + QString::fromStdString(name)] =
                QByteArray::fromStdString(std::get<std::string>(svg));
        }
    }
}

void TestShippedDrawings::everyDrawingComposes()
{
    QVERIFY(m_svgs.size() > 300);
    for (const auto &[name, svg] : m_svgs)
        QVERIFY2(QSvgRenderer(svg).isValid(), qPrintable(name));
}

void TestShippedDrawings::threeColoursAndNoOther()
{
    static const QRegularExpression colour("(?:fill|stroke)=\"(#[0-9A-F]{6})\"");
    for (const auto &[name, svg] : m_svgs) {
        auto found = colour.globalMatch(QString::fromUtf8(svg));
        while (found.hasNext()) {
            const QString code = found.next().captured(1);
            QVERIFY2(code == "#26211B" || code == "#EFBF72" || code == "#FFFBF2",
                     qPrintable(name + " " + code));
        }
    }
}

/// "The tint marks what the hands work on."
void TestShippedDrawings::somethingIsTinted()
{
    for (const auto &[name, svg] : m_svgs)
        QVERIFY2(svg.contains("#EFBF72"), qPrintable(name));
}

/// Offers crop a scene to its middle 240 x 240: something must be left there to see.
void TestShippedDrawings::theMiddleCarriesTheMeaning()
{
    for (const auto &[name, svg] : m_svgs) {
        if (!name.startsWith("scene-"))
            continue;
        QSvgRenderer renderer(svg);
        renderer.setViewBox(QRectF(40, 0, 240, 240));
        QImage image(96, 96, QImage::Format_Grayscale8);
        image.fill(Qt::white);
        QPainter painter(&image);
        painter.setRenderHint(QPainter::Antialiasing);
        renderer.render(&painter);
        painter.end();
        int ink = 0;
        for (int y = 0; y < 96; ++y) {
            for (int x = 0; x < 96; ++x)
                ink += qGray(image.pixel(x, y)) < 120 ? 1 : 0;
        }
        const double share = ink / (96.0 * 96.0);
        // Bounds seen over the whole set, widened: emptier is a blank, fuller is a blot.
        QVERIFY2(share > 0.02 && share < 0.35, qPrintable(name + " " + QString::number(share)));
    }
}

void TestShippedDrawings::everyDrawingIsUsed()
{
    std::set<QString> used;
    const catalogue::Catalogue catalogue = shipped::catalogue();
    for (const catalogue::ItemKind &item : catalogue.items())
        used.insert(QString::fromStdString(item.drawing));
    for (const catalogue::Activity &activity : catalogue.activities()) {
        used.insert(QString::fromStdString(activity.picture.drawing));
        for (const catalogue::Step &step : activity.steps) {
            if (step.picture)
                used.insert(QString::fromStdString(step.picture->drawing));
        }
    }
    used.insert("item-box"); // of the screens themselves
    for (const auto &[name, svg] : m_svgs)
        QVERIFY2(used.contains(name), qPrintable(name + " is drawn for nothing"));
}

void TestShippedDrawings::everyDrawingNamedIsThere()
{
    const catalogue::Catalogue catalogue = shipped::catalogue();
    for (const catalogue::ItemKind &item : catalogue.items())
        QVERIFY2(m_svgs.contains(QString::fromStdString(item.drawing)), item.drawing.c_str());
    for (const catalogue::Activity &activity : catalogue.activities()) {
        QVERIFY2(m_svgs.contains(QString::fromStdString(activity.picture.drawing)),
                 activity.picture.drawing.c_str());
        for (const catalogue::Step &step : activity.steps)
            QVERIFY2(!step.picture ||
                         m_svgs.contains(QString::fromStdString(step.picture->drawing)),
                     activity.id.value.c_str());
    }
}

void TestShippedDrawings::everyHandAndPartIsUsed()
{
    QString all;
    const std::vector<DrawingFile> files = shipped::drawingFiles();
    for (const DrawingFile &file : files)
        all += QString::fromStdString(file.text) + "\n";
    for (const DrawingFile &file : files) {
        if (file.kind != Kind::Hand && file.kind != Kind::Part)
            continue;
        const QRegularExpression use(
            QString("\\b%1: %2(?![\\w-])")
                .arg(file.kind == Kind::Hand ? "hand" : "part", QString::fromStdString(file.name)));
        QVERIFY2(use.match(all).hasMatch(), (file.name + " is drawn by nothing").c_str());
    }
}

/// job.md scenario on languages, traps: "mirrored left-handed scissors".
void TestShippedDrawings::scissorsGoOneWay()
{
    const Shelf shelf = shipped::drawings();
    int withScissors = 0;
    for (const DrawingFile &file : shipped::drawingFiles()) {
        if (file.kind == Kind::Scene && file.text.find("part: scissors") != std::string::npos) {
            ++withScissors;
            QVERIFY2(!hasLeftHanded(shelf, file.name), file.name.c_str());
        } else if (file.kind == Kind::Scene && hasLeftHanded(shelf, file.name)) {
            const auto left = composeLeftHanded(shelf, file.name);
            QVERIFY(QSvgRenderer(QByteArray::fromStdString(std::get<std::string>(left))).isValid());
        }
    }
    QVERIFY(withScissors >= 6);
}

QTEST_GUILESS_MAIN(TestShippedDrawings)
#include "tst_shipped_drawings.moc"
