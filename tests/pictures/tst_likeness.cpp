#include <QtTest>

#include <QPainter>

#include "tests/pictures/album.h"

using namespace lidlark::pictures;

namespace {

/// A page made up of what pages are made of, in colours of the light look (look.md 1).
struct MadeUp {
    QPoint button{40, 300};
    QColor soft{0x5f, 0x54, 0x44};
    QColor card{0xff, 0xfb, 0xf2};
    QString word = QStringLiteral("Dough");
};

QImage paint(const MadeUp &page)
{
    QImage picture(360, 740, QImage::Format_RGB32);
    picture.fill(QColor(0xf5, 0xee, 0xdf));
    QPainter painter(&picture);
    painter.setRenderHint(QPainter::Antialiasing);
    QFont font(QStringLiteral("Andika"));
    font.setPixelSize(14); // the smallest text there is
    painter.setFont(font);
    painter.setPen(QPen(QColor(0x8a, 0x7b, 0x62), 1.5));
    painter.setBrush(page.card);
    painter.drawRoundedRect(QRectF(page.button, QSizeF(120, 48)), 5, 5);
    painter.setPen(page.soft);
    painter.drawText(40, 120, QStringLiteral("Three lights, near the top"));
    painter.setPen(QColor(0x26, 0x21, 0x1b));
    painter.drawText(60, 329, page.word);
    return picture;
}

} // namespace

/// Guards that the comparison sees what a person would be told about, and nothing else.
class TestLikeness : public QObject
{
    Q_OBJECT

private slots:
    void aReferenceIsAlikeToItself()
    {
        const QImage page = paint({});
        QCOMPARE(compare(kept(page), page).differing, 0);
    }

    void aFewBlendedDotsAreNothing()
    {
        QImage page = paint({});
        const QImage reference = kept(page);
        for (int dot = 0; dot < Likeness::mostDots; ++dot)
            page.setPixel(17 * dot, 31 * dot, qRgb(0, 0, 0));
        QVERIFY(compare(reference, page).isAlike());
        page.setPixel(359, 739, qRgb(0, 0, 0));
        QVERIFY(!compare(reference, page).isAlike());
    }

    void anotherCompilersLastBitIsNothing()
    {
        QImage page = paint({});
        const QImage reference = kept(page);
        for (int y = 0; y < page.height(); ++y) {
            for (int x = 0; x < page.width(); ++x) {
                const QRgb dot = page.pixel(x, y);
                const auto less = [](int channel) { return std::max(0, channel - 2); };
                page.setPixel(x, y, qRgb(less(qRed(dot)), less(qGreen(dot)), less(qBlue(dot))));
            }
        }
        QCOMPARE(compare(reference, page).differing, 0);
    }

    void aMutatedPageIsSeen_data()
    {
        QTest::addColumn<QImage>("page");
        MadeUp moved;
        moved.button += QPoint(4, 0);
        QTest::newRow("a button moved by 4 px") << paint(moved);
        MadeUp lowered;
        lowered.button += QPoint(0, 1);
        QTest::newRow("a button moved by 1 px") << paint(lowered);
        MadeUp faded;
        faded.soft = QColor(0x7f, 0x74, 0x64);
        QTest::newRow("one colour changed") << paint(faded);
        MadeUp sheet;
        sheet.card = QColor(0xf5, 0xee, 0xdf);
        QTest::newRow("a card in the colour of the sheet") << paint(sheet);
        MadeUp other;
        other.word = QStringLiteral("Pegs");
        QTest::newRow("a word exchanged") << paint(other);
        MadeUp letter;
        letter.word = QStringLiteral("Rough");
        QTest::newRow("a letter exchanged") << paint(letter);
        QTest::newRow("another size") << paint({}).copy(0, 0, 360, 700);
    }
    void aMutatedPageIsSeen()
    {
        QFETCH(QImage, page);
        const QImage reference = kept(paint({}));
        QVERIFY2(!compare(reference, page).isAlike(),
                 qPrintable(QString::number(compare(reference, page).differing)));
    }

    void aDifferenceIsShownAndItsPathIsSaid()
    {
        const QTemporaryDir folder;
        const QDir references(folder.filePath(QStringLiteral("references")));
        const QDir differences(folder.filePath(QStringLiteral("differences")));
        const QString name = QStringLiteral("light/made-up");
        Album kept(references, differences);
        QVERIFY(kept.compare(name, paint({})).contains(QStringLiteral("no reference")));
        QVERIFY(kept.renew(name, paint({})));
        QCOMPARE(kept.compare(name, paint({})), QString());
        MadeUp moved;
        moved.button += QPoint(4, 0);
        const QString said = kept.compare(name, paint(moved));
        const QString file = differences.filePath(QStringLiteral("light-made-up.png"));
        QVERIFY2(said.contains(file), qPrintable(said));
        QCOMPARE(QImage(file).size(), QSize(3 * 360 + 2 * 8, 740));
        QVERIFY(kept.renew(name, paint(moved)));
        QCOMPARE(kept.compare(name, paint(moved)), QString());
    }

    void aReferenceOfNothingIsFound()
    {
        const QTemporaryDir folder;
        const QDir references(folder.path());
        Album before(references, references);
        QVERIFY(before.renew(QStringLiteral("light/gone"), paint({})));
        QVERIFY(before.renew(QStringLiteral("light/there"), paint({})));
        Album now(references, references);
        QVERIFY(now.renew(QStringLiteral("light/there"), paint({})));
        QCOMPARE(now.leftOver(), QStringList(QStringLiteral("light/gone")));
        now.clear();
        QVERIFY(now.leftOver().isEmpty());
    }
};

QTEST_MAIN(TestLikeness)
#include "tst_likeness.moc"
