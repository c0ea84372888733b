#include <QtTest>

#include <QQuickWindow>

#include "mobile/platform/qr/qr_picture.h"
#include "mobile/platform/qr/qr_reader.h"
#include "qr_square.h"

using lidlark::design::QrSquare;
using namespace lidlark::mobile;

namespace {

const QString text = QStringLiteral("lidlark-join:1?secret=00112233445566778899");

} // namespace

/// Guards that another phone can read the squares off the screen: black on white on any ground, at
/// whole dots of the screen, at every size there is room for.
class TestQrSquare : public QObject
{
    Q_OBJECT

private:
    QQuickWindow m_window;
    QrSquare *m_square = nullptr;

    QImage shown(const QSizeF &size, const QPointF &at = {})
    {
        m_square->setSize(size);
        m_square->setPosition(at);
        return m_window.grabWindow();
    }

    static bool isBlackOrWhite(const QImage &picture, const QRect &part)
    {
        for (int y = part.top(); y <= part.bottom(); ++y) {
            for (int x = part.left(); x <= part.right(); ++x) {
                const QRgb colour = picture.pixel(x, y) & 0xFFFFFFU;
                if (colour != 0 && colour != 0xFFFFFFU)
                    return false;
            }
        }
        return true;
    }

private slots:
    void initTestCase()
    {
        m_window.setColor(QColor(28, 25, 22)); // the dark sheet (look.md 1)
        m_window.resize(360, 640);
        m_square = new QrSquare(m_window.contentItem());
        m_square->setText(text);
        m_window.show();
        QVERIFY(QTest::qWaitForWindowExposed(&m_window));
    }

    void itIsReadOffTheScreen()
    {
        for (int side = 60; side <= 360; side += 20)
            QVERIFY2(readQr(shown(QSizeF(side, side))) == std::optional(text),
                     qPrintable(QString::number(side)));
        QCOMPARE(readQr(shown(QSizeF(320, 500), QPointF(20, 60))), std::optional(text));
        QCOMPARE(readQr(shown(QSizeF(300.5, 201.3), QPointF(10.4, 33.7))), std::optional(text));
    }

    /// Exactly the picture that the library makes for so many dots, in the middle of the room.
    void everyModuleIsAsManyDots()
    {
        const int modules = qrPicture(text, 1).width();
        for (const int side : {modules, 3 * modules - 1, 5 * modules, 340}) {
            const int dots = side / modules;
            const QImage expected = qrPicture(text, dots).convertToFormat(QImage::Format_RGB32);
            const QImage picture = shown(QSizeF(side, side));
            const int corner = (side - expected.width()) / 2;
            const QRect part(corner, corner, expected.width(), expected.height());
            QCOMPARE(picture.copy(part).convertToFormat(QImage::Format_RGB32), expected);
        }
    }

    void nothingIsGreyOnIt()
    {
        const int side = 5 * qrPicture(text, 1).width();
        for (const qreal off : {0.0, 0.25, 0.5, 0.75}) {
            const QImage picture = shown(QSizeF(side, side), QPointF(10 + off, 20 + off));
            QVERIFY(isBlackOrWhite(picture, QRect(12, 22, side - 4, side - 4)));
        }
    }

    void whatCannotBeShownPaintsNothing()
    {
        QSignalSpy changed(m_square, &QrSquare::textChanged);
        m_square->setText(QString::fromUtf8("caf\u00e9"));
        QVERIFY(m_square->missing());
        const QImage picture = shown(QSizeF(300, 300));
        QCOMPARE(picture.pixelColor(150, 150), QColor(28, 25, 22));
        m_square->setText(text);
        QVERIFY(!m_square->missing());
        QCOMPARE(readQr(shown(QSizeF(300, 300))), std::optional(text));
        QCOMPARE(changed.size(), 2);
        QCOMPARE(m_square->implicitWidth(), 4.0 * qrPicture(text, 1).width());
    }
};

QTEST_MAIN(TestQrSquare)
#include "tst_qr_square.moc"
