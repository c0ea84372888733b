#include <QtTest>

#include "tests/mobile/prints/print_room.h"

#include <cmath>

using namespace lidlark;
using namespace lidlark::mobile;
using namespace lidlark::test;

/// Guards what comes out of a printer, whatever is printed (job.md T5, T6, T7, A4): each print is
/// kept as a file and read back by other programs.
class TestPrints : public QObject
{
    Q_OBJECT

private:
    PrintRoom m_room;

    static bool isSize(const QSizeF &size, QSizeF wanted)
    {
        return std::abs(size.width() - wanted.width()) <= 0.5 &&
               std::abs(size.height() - wanted.height()) <= 0.5;
    }
    static QByteArray told(const QSizeF &size)
    {
        return QByteArray::number(size.width()) + " x " + QByteArray::number(size.height());
    }
    struct Case {
        const char *file;
        const char *child;
        PrintWish wish;
        int pages;
        QSizeF size; ///< mm
    };
    static QList<Case> cases()
    {
        const QSizeF a4(210, 297);
        const QSizeF letter(215.9, 279.4);
        const QSizeF a5(148, 210);
        const QSizeF a6(105, 148);
        return {
            {"lid a6.pdf", "Fin", {Print::LidList, Paper::A6, {"en"}}, 1, a6},
            {"lid a6 two.pdf", "Anya", {Print::LidList, Paper::A6, {"en", "pl"}}, 1, a6},
            {"lid a5 two.pdf", "Zoya", {Print::LidList, Paper::A5, {"ur", "en"}}, 1, a5},
            {"lid a6 ur.pdf", "Zoya", {Print::LidList, Paper::A6, {"ur"}}, 1, a6},
            {"lid a4.pdf", "Fin", {Print::LidList, Paper::A4, {"en"}}, 1, a4.transposed()},
            {"lid letter.pdf",
             "Mairead",
             {Print::LidList, Paper::Letter, {"en"}},
             1,
             letter.transposed()},
            {"label a4.pdf", "Anya", {Print::Label, Paper::A4, {"en", "pl"}}, 1, a4.transposed()},
            {"label a6.pdf", "Zoya", {Print::Label, Paper::A6, {"ur"}}, 1, a6},
            {"labels letter.pdf", "Fin", {Print::Labels, Paper::Letter, {"en"}}, 2, letter},
            {"travel a4.pdf", "Fin", {Print::Travel, Paper::A4, {"en"}}, 1, a4},
            {"travel a4 ur.pdf", "Zoya", {Print::Travel, Paper::A4, {"ur"}}, 1, a4},
            {"travel letter pl.pdf", "Anya", {Print::Travel, Paper::Letter, {"pl"}}, 1, letter},
            {"tally a4.pdf", "Fin", {Print::Tally, Paper::A4, {"en"}}, 1, a4},
            {"tally letter ur.pdf", "Zoya", {Print::Tally, Paper::Letter, {"ur"}}, 1, letter},
            {"tally a4 pl.pdf", "Anya", {Print::Tally, Paper::A4, {"pl"}, false, 1}, 1, a4},
            {"summary a4.pdf", "Fin", {Print::Summary, Paper::A4, {"en"}}, 1, a4},
            {"summary a5 ur.pdf", "Fin", {Print::Summary, Paper::A5, {"ur"}}, 1, a5},
            {"restock a4.pdf", "Fin", {Print::Restock, Paper::A4, {"en"}}, 1, a4},
            {"kite a4.pdf", "Fin", {Print::KiteCard, Paper::A4, {}}, 1, a4},
            {"kite letter.pdf", "Fin", {Print::KiteCard, Paper::Letter, {}}, 1, letter},
            {"kite a5.pdf", "Fin", {Print::KiteCard, Paper::A5, {}}, 1, a5.transposed()},
            {"kite a6.pdf", "Fin", {Print::KiteCard, Paper::A6, {}}, 2, a6},
        };
    }

private slots:
    void initTestCase()
    {
        m_room.open();
        QVERIFY2(m_room.morven().problem().isEmpty(), qPrintable(m_room.morven().problem()));
    }

    void everyPrint_data()
    {
        QTest::addColumn<int>("number");
        const QList<Case> all = cases();
        for (int i = 0; i < all.size(); ++i)
            QTest::newRow(all[i].file) << i;
    }
    /// Sizes: ISO 216:2007, table 1, and ANSI/ASME Y14.1, size A. job.md A4: nothing by colour.
    /// Margins: printers leave some 4 mm bare (common practice, no source); cut marks and the edge
    /// of a card may lie there, words may not.
    void everyPrint()
    {
        QFETCH(int, number);
        const Case all = cases().at(number);
        const Printed print = m_room.printed(all.child, all.wish, all.file);
        QCOMPARE(print.pages(), all.pages);
        QVERIFY2(isSize(print.size(), all.size), told(print.size()));
        const auto fonts = print.fonts();
        QVERIFY(!fonts.isEmpty());
        for (const Printed::Font &font : fonts)
            QVERIFY2(font.embedded, qPrintable(font.name));
        const bool urdu = all.wish.languages.contains(QStringLiteral("ur"));
        const QString face = urdu ? QStringLiteral("NotoNaskhArabic") : QStringLiteral("Andika");
        QVERIFY2(
            std::ranges::any_of(fonts, [&](const auto &one) { return one.name.startsWith(face); }),
            qPrintable(face));
        QVERIFY2(!print.bytes().contains("/Subtype /Image"), "not by lines but by dots");
    }

    void nothingIsInColour()
    {
        for (const Case &one : cases()) {
            const QImage picture = m_room.printed(one.child, one.wish, one.file).picture(40, false);
            QVERIFY(!picture.isNull());
            for (int y = 0; y < picture.height(); ++y) {
                for (int x = 0; x < picture.width(); ++x)
                    QVERIFY2(QColor(picture.pixel(x, y)).hsvSaturation() == 0, one.file);
            }
        }
    }
};

QTEST_MAIN(TestPrints)
#include "tst_prints.moc"
