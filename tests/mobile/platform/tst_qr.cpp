#include <QtTest>

#include <QImage>
#include <QPainter>
#include <QTransform>

#include "mobile/platform/qr/qr_picture.h"
#include "mobile/platform/qr/qr_reader.h"

#include <ZXing/BitMatrix.h>
#include <ZXing/MultiFormatWriter.h>

#include <algorithm>
#include <random>

using namespace lidlark::mobile;

namespace {

const QString shortText = QStringLiteral("lidlark-join:1?secret=00112233445566778899");
const QString usualText =
    shortText + QStringLiteral("&place=https%3A%2F%2Fdav.example%2Ffamilies%2Fcrew%25201%2F");

/// As libqrencode wrote it, of this size in the middle of a sheet of paper.
QImage onPaper(const QString &text, int modulePixels, const QTransform &turned = {})
{
    const QImage code = qrPicture(text, modulePixels);
    QImage paper(1200, 1200, QImage::Format_RGB32);
    paper.fill(QColor(236, 228, 214));
    QPainter painter(&paper);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.translate(600, 600);
    painter.setTransform(turned, true);
    painter.drawImage(QPointF(-code.width() / 2.0, -code.height() / 2.0), code);
    return paper;
}

/// What a cheap camera adds: light from one side, a little out of focus, grain.
QImage photographed(const QImage &scene, unsigned seed)
{
    const QImage blurred =
        scene.scaled(scene.size() / 2, Qt::KeepAspectRatio, Qt::SmoothTransformation)
            .scaled(scene.size(), Qt::KeepAspectRatio, Qt::SmoothTransformation);
    QImage photo = blurred.convertToFormat(QImage::Format_Grayscale8);
    std::mt19937 chance(seed);
    for (int y = 0; y < photo.height(); ++y) {
        uchar *line = photo.scanLine(y);
        for (int x = 0; x < photo.width(); ++x) {
            const int light = 100 - 45 * x / photo.width(); // per cent
            const int grain = static_cast<int>(chance() % 41U) - 20;
            line[x] = static_cast<uchar>(std::clamp(line[x] * light / 100 + grain, 0, 255));
        }
    }
    return photo;
}

/// The picture of the same text that zxing's own writer makes; level M is its 2 to 3 of 8.
QImage byOtherWriter(const QString &text,
                     ZXing::BarcodeFormat format = ZXing::BarcodeFormat::QRCode)
{
    ZXing::MultiFormatWriter writer(format);
    writer.setMargin(quietModules).setEccLevel(3);
    const ZXing::BitMatrix matrix = writer.encode(text.toStdString(), 0, 0);
    QImage picture(matrix.width(), matrix.height(), QImage::Format_Grayscale8);
    for (int y = 0; y < matrix.height(); ++y) {
        for (int x = 0; x < matrix.width(); ++x)
            picture.scanLine(y)[x] = matrix.get(x, y) ? 0 : 255;
    }
    return picture;
}

QImage noise(unsigned seed)
{
    QImage picture(500, 400, QImage::Format_Grayscale8);
    std::mt19937 chance(seed);
    for (int y = 0; y < picture.height(); ++y) {
        for (int x = 0; x < picture.width(); ++x)
            picture.scanLine(y)[x] = static_cast<uchar>(chance() & 255U);
    }
    return picture;
}

std::optional<QString> some(const QString &text)
{
    return text;
}

} // namespace

/// Guards that what one phone shows another can read. libqrencode writes and zxing-cpp reads: two
/// programs that share no line, so what both agree on is the standard's (ISO/IEC 18004).
class TestQr : public QObject
{
    Q_OBJECT

private slots:
    void everySizeIsRead()
    {
        for (int pixels = 1; pixels <= mostModulePixels; ++pixels) {
            const QImage picture = qrPicture(usualText, pixels);
            QVERIFY2(readQr(picture) == some(usualText), qPrintable(QString::number(pixels)));
            QCOMPARE(picture.width(), pixels * qrPicture(usualText, 1).width());
        }
    }

    /// Each module is a square of just so many dots, pure black or white, with white around all.
    void modulesAreCrisp()
    {
        const QImage modules = qrPicture(shortText, 1);
        const QImage large = qrPicture(shortText, 7);
        for (int y = 0; y < large.height(); ++y) {
            for (int x = 0; x < large.width(); ++x) {
                const int grey = qGray(large.pixel(x, y));
                QCOMPARE(grey, qGray(modules.pixel(x / 7, y / 7)));
                QVERIFY(grey == 0 || grey == 255);
            }
        }
        const int side = modules.width();
        for (int y = 0; y < side; ++y) {
            for (int x = 0; x < side; ++x) {
                const bool edge = std::min({x, y, side - 1 - x, side - 1 - y}) < quietModules;
                if (edge)
                    QCOMPARE(qGray(modules.pixel(x, y)), 255);
            }
        }
        QCOMPARE(qGray(modules.pixel(quietModules, quietModules)), 0); // a finder pattern's corner
    }

    /// Source: Denso Wave, "QR Code Introduction: Symbol Version": version 1 has 21 modules a side,
    /// each later one 4 more, version 40 177.
    void sizesAreTheStandards()
    {
        QCOMPARE(qrPicture("a", 1).width(), 21 + 2 * quietModules);
        QCOMPARE(qrPicture(QString(2331, 'a'), 1).width(), 177 + 2 * quietModules);
        for (int length = 1; length <= 2331; length += 61)
            QCOMPARE((qrPicture(QString(length, 'a'), 1).width() - 2 * quietModules - 21) % 4, 0);
    }

    /// zxing's writer chooses the same size for every text, so both count the capacity of level M
    /// alike, and its squares read the same.
    void theOtherWriterMakesTheSame()
    {
        for (const int length : {1, 14, 15, 42, 90, 106, 107, 213, 300, 666, 1000, 2331}) {
            const QString text = QString(length, 'a');
            const QImage ours = qrPicture(text, 1);
            const QImage theirs = byOtherWriter(text);
            QCOMPARE(ours.size(), theirs.size());
            QCOMPARE(readQr(ours.scaled(ours.size() * 3)), some(text));
            QCOMPARE(readQr(theirs.scaled(theirs.size() * 3)), some(text));
        }
    }

    void theLongestTextIsRead()
    {
        QString text = shortText;
        for (int i = 0; text.size() < 2331; ++i)
            text += QString::number(i, 36);
        text.truncate(2331);
        QCOMPARE(readQr(qrPicture(text, 4)), some(text));
        QVERIFY(qrPicture(QString(2332, 'a'), 4).isNull());
    }

    void everyCharacterIsRead()
    {
        QString text;
        for (char c = ' '; c <= '~'; ++c)
            text += QLatin1Char(c);
        QCOMPARE(readQr(qrPicture(text, 4)), some(text));
    }

    void turnedHoweverItIs()
    {
        for (int degrees = 0; degrees < 360; degrees += 15) {
            const QImage paper = onPaper(usualText, 8, QTransform().rotate(degrees));
            QVERIFY2(readQr(paper) == some(usualText), qPrintable(QString::number(degrees)));
        }
    }

    /// Held at a slant: the far edge is a third shorter.
    void atASlant()
    {
        const QImage flat = onPaper(usualText, 9);
        const QPolygonF sheet({{0, 0}, {1200, 0}, {1200, 1200}, {0, 1200}});
        const QPolygonF seen({{200, 60}, {1000, 120}, {1190, 1150}, {10, 1080}});
        QTransform slant;
        QVERIFY(QTransform::quadToQuad(sheet, seen, slant));
        for (const int degrees : {0, 90, 200}) {
            const QImage turned = flat.transformed(QTransform().rotate(degrees)).scaled(1200, 1200);
            const QImage scene = turned.transformed(slant, Qt::SmoothTransformation);
            QVERIFY2(readQr(scene) == some(usualText), qPrintable(QString::number(degrees)));
        }
    }

    void asACameraSeesIt()
    {
        const QPolygonF sheet({{0, 0}, {1200, 0}, {1200, 1200}, {0, 1200}});
        const QPolygonF seen({{120, 40}, {1100, 90}, {1180, 1160}, {30, 1100}});
        QTransform slant;
        QVERIFY(QTransform::quadToQuad(sheet, seen, slant));
        for (unsigned seed = 0; seed < 10; ++seed) {
            const QTransform turned = QTransform().rotate(37.0 * seed);
            const QImage scene = onPaper(usualText, 9, turned).transformed(slant);
            QVERIFY2(readQr(photographed(scene, seed)) == some(usualText),
                     qPrintable(QString::number(seed)));
        }
    }

    /// A thumb over a corner of it: a twentieth of the squares.
    void somethingLiesOnIt()
    {
        QImage code = qrPicture(usualText, 8).convertToFormat(QImage::Format_RGB32);
        const int side = code.width();
        QPainter painter(&code);
        painter.fillRect(side * 7 / 10, side * 7 / 10, side / 5, side / 5, Qt::gray);
        painter.end();
        QCOMPARE(readQr(code), some(usualText));
    }

    void whereThereIsNoneNothingIsRead_data()
    {
        QTest::addColumn<QImage>("picture");
        QImage white(400, 300, QImage::Format_RGB32);
        white.fill(Qt::white);
        QTest::newRow("white") << white;
        QTest::newRow("no picture") << QImage();
        QImage dot(1, 1, QImage::Format_Mono);
        dot.fill(0);
        QTest::newRow("one dot") << dot;
        for (unsigned seed = 0; seed < 5; ++seed)
            QTest::addRow("noise %u", seed) << noise(seed);
        QImage chess(400, 400, QImage::Format_RGB32);
        for (int y = 0; y < 400; ++y) {
            for (int x = 0; x < 400; ++x)
                chess.setPixel(x, y, (x / 10 + y / 10) % 2 == 0 ? 0xFF000000 : 0xFFFFFFFF);
        }
        QTest::newRow("a board of squares") << chess;
        QTest::newRow("another kind of code")
            << byOtherWriter("12345678", ZXing::BarcodeFormat::Aztec).scaled(300, 300);
        const QImage code = qrPicture(usualText, 8);
        QTest::newRow("half a code") << code.copy(0, 0, code.width() / 2, code.height());
        QImage torn = code.convertToFormat(QImage::Format_RGB32);
        QPainter painter(&torn);
        painter.fillRect(torn.width() / 4, torn.height() / 4, torn.width() / 2, torn.height() / 2,
                         Qt::white);
        painter.end();
        QTest::newRow("a hole in the middle") << torn;
    }
    void whereThereIsNoneNothingIsRead()
    {
        QFETCH(QImage, picture);
        QCOMPARE(readQr(picture), std::nullopt);
    }

    /// Forty-eight megapixels, one code on them.
    void aHugePictureIsRead()
    {
        QImage huge(8000, 6000, QImage::Format_Grayscale8);
        huge.fill(Qt::white);
        QVERIFY(!readQr(huge));
        QPainter painter(&huge);
        painter.drawImage(2000, 1500, qrPicture(usualText, 32));
        painter.end();
        QCOMPARE(readQr(huge), some(usualText));
        // Nor does one that is long and thin come to nothing.
        QVERIFY(!readQr(QImage(20'000, 1, QImage::Format_Grayscale8)));
    }

    void everyFormatOfAPictureIsRead()
    {
        const QImage code = qrPicture(shortText, 5);
        for (const auto format :
             {QImage::Format_Mono, QImage::Format_Indexed8, QImage::Format_RGB16,
              QImage::Format_ARGB32_Premultiplied, QImage::Format_RGBA64})
            QCOMPARE(readQr(code.convertToFormat(format)), some(shortText));
    }

    void whatCannotBeShownIsNot()
    {
        QVERIFY(qrPicture({}, 4).isNull());
        QVERIFY(qrPicture(QString::fromUtf8("caf\u00e9"), 4).isNull());
        QVERIFY(qrPicture("two\nlines", 4).isNull());
        QVERIFY(qrPicture(QString("zero") + QChar(0) + "byte", 4).isNull());
        QVERIFY(qrPicture(shortText, 0).isNull());
        QVERIFY(qrPicture(shortText, mostModulePixels + 1).isNull());
        QVERIFY(qrPicture(QString(1'000'000, 'a'), 1).isNull());
    }
};

QTEST_GUILESS_MAIN(TestQr)
#include "tst_qr.moc"
