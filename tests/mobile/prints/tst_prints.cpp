#include <QtTest>

#include "mobile/prints/box_label_print.h"
#include "mobile/prints/build_sheet_print.h"
#include "mobile/prints/lid_list_print.h"
#include "mobile/prints/pack_list_print.h"
#include "mobile/prints/print_sheet.h"
#include "tests/mobile/prints/print_room.h"

#include <cmath>

using namespace lidlark;
using namespace lidlark::mobile;
using namespace lidlark::test;

/// Guards what comes out of a printer, whatever is printed (job.md T5, T6, T7, A4): each print is
/// kept as a file and read back by other programs. And what stands on those of a build (T2, T4).
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
    static PrintWish ofItems(const char *language)
    {
        PrintWish wish{Print::PackList, Paper::A4, {QString::fromLatin1(language)}};
        wish.byItem = true;
        return wish;
    }
    [[nodiscard]] QString words(const PrintPages &pages, const char *file) const
    {
        if (!savePdf(m_room.papers(), QString::fromLatin1(file), pages))
            qFatal("%s: not printed", file);
        return plain(Printed(QDir(m_room.papers()).filePath(QString::fromLatin1(file))).text()) +
               u' ';
    }
    static QList<Case> cases()
    {
        const QSizeF a4(210, 297);
        const QSizeF letter(215.9, 279.4);
        const QSizeF a5(148, 210);
        const QSizeF a6(105, 148);
        return {
            {"lid a6.pdf", "Fin", {Print::LidList, Paper::A6, {"en"}}, 2, a6},
            {"lid a6 two.pdf", "Anya", {Print::LidList, Paper::A6, {"en", "pl"}}, 2, a6},
            {"lid a5 two.pdf", "Zoya", {Print::LidList, Paper::A5, {"ur", "en"}}, 2, a5},
            {"lid a6 ur.pdf", "Zoya", {Print::LidList, Paper::A6, {"ur"}}, 2, a6},
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
            {"build a4.pdf", "Fin", {Print::BuildSheet, Paper::A4, {"en"}}, 2, a4},
            {"build letter ur.pdf", "Fin", {Print::BuildSheet, Paper::Letter, {"ur"}}, 2, letter},
            {"pack letter pl.pdf", "Fin", {Print::PackList, Paper::Letter, {"pl"}}, 15, letter},
            {"pack item a4.pdf", "Fin", ofItems("en"), 7, a4},
            {"pack item a4 ur.pdf", "Fin", ofItems("ur"), 7, a4},
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

    /// T2. Source: job.md 2.8: each line's packs and spend, the sum, and what is in each box.
    void aBuildSheetIsTheGoldenCase()
    {
        const Printed print =
            m_room.printed("Fin", {Print::BuildSheet, Paper::A4, {"en"}}, "build a4.pdf");
        const QString text = plain(print.text());
        const QStringList lines = print.text().split(u'\n');
        for (const shipped::Row &row : golden::rows()) {
            const QString spend = QStringLiteral("£%1.%2")
                                      .arg(row.at("spend").toInt() / 100)
                                      .arg(row.at("spend").toInt() % 100, 2, 10, QChar(u'0'));
            const QString packs =
                QStringLiteral("%1 × pack of %2, at").arg(row.at("packs"), row.at("pack"));
            const bool stands = std::ranges::any_of(lines, [&](const QString &line) {
                return line.contains(packs) && line.contains(spend) &&
                       line.trimmed().endsWith(row.at("leftover"));
            });
            // Where a shop stands under the packs, they are on lines of their own.
            const bool apart = row.at("item") == "bands" && text.contains(packs) &&
                               text.contains(spend + u' ' + row.at("leftover"));
            QVERIFY2(stands || apart, qPrintable(row.at("item") + print.text()));
        }
        const auto today = text.indexOf(QStringLiteral("What you spend today £220.34"));
        const auto boxes = text.indexOf(QStringLiteral("What is in each box"));
        QVERIFY2(today > 0 && boxes > today, qPrintable(text));
        for (const QString &worth : {QStringLiteral("£6.99"), QStringLiteral("£9.12"),
                                     QStringLiteral("£8.09"), QStringLiteral("£6.27")}) {
            QVERIFY2(text.indexOf(worth, boxes) > boxes, qPrintable(worth));
            QCOMPARE(text.count(worth), 1);
        }
        QCOMPARE(text.count(QStringLiteral("£220.34")), 1);
        QVERIFY(text.contains(QStringLiteral("Page 1 of 2")));
        QVERIFY(text.contains(QStringLiteral("Harbour Stores")));
    }

    /// What keeps a sheet from being reckoned stands on it, and so does an empty table.
    void whatCannotBePrintedYetSaysWhy()
    {
        const PrintLanguage in(QStringLiteral("en"), realCatalogue());
        const QSize size = sizeOf(Paper::A4);
        usecase::BuildSheetPage sheet;
        sheet.name = "Spring boxes";
        sheet.boxes = 2;
        sheet.problems = {{workbench::BuildFault::NoPrice, "", "clothes pegs", "Harbour Stores"}};
        const QString wrong = words(buildSheetPrint(sheet, in, size), "build wrong.pdf");
        QVERIFY2(
            wrong.contains(QStringLiteral("Clothes pegs from Harbour Stores: there is no price")),
            qPrintable(wrong));
        QVERIFY(!wrong.contains(QStringLiteral("spend today")));
        const QString none = words(buildSheetPrint({}, in, size), "build empty.pdf");
        QVERIFY2(none.contains(QStringLiteral("There is no box")), qPrintable(none));
        const QString done = words(packListPrint({}, true, in, size), "pack empty.pdf");
        QVERIFY2(done.contains(QStringLiteral("No box of this build waits")), qPrintable(done));
    }

    /// A box of more lines than a page holds goes on under its own name.
    void aLongBoxGoesOnUnderItsName()
    {
        usecase::PackListPage list{"Spring boxes", usecase::island::dayOne(), {}, {}, {}};
        workbench::PackBox box;
        box.code = "K7";
        box.special = true;
        for (int i = 1; i <= 60; ++i) {
            workbench::PackLine line;
            line.item = {"thing-" + std::to_string(i)};
            line.pieces = i;
            box.lines.push_back(line);
        }
        list.boxes = {box};
        const PrintPages pages =
            packListPrint(list, false, {QStringLiteral("en"), realCatalogue()}, sizeOf(Paper::A4));
        QCOMPARE(pages.size(), std::size_t{3});
        const QString text = words(pages, "pack long.pdf");
        QCOMPARE(text.count(QStringLiteral("K7")), 3);
        for (int i = 1; i <= 60; ++i)
            QCOMPARE(text.count(QStringLiteral("Thing-%1 ").arg(i)), 1);
    }

    /// T5: a box of twenty kinds of thing has a second card, and each card says which list it is
    /// of, the words that go with it too. A sheet is not filled up with half a set.
    void aLongLidListGoesOnToASecondCard()
    {
        usecase::LidListPage list{"Fin", "CP-Y4", 12, usecase::island::dayOne(), {}, {}};
        const std::vector<catalogue::ItemKind> &items = realCatalogue().items();
        for (std::size_t i = 0; i < 20; ++i)
            list.lines.push_back({{{items[i].id, 2}}});
        const PrintLanguages languages{{QStringLiteral("en"), realCatalogue()}};
        const QSize card(sizeOf(Paper::A4).height() / 2, sizeOf(Paper::A4).width());
        PrintPages cards = lidListPrint(list, languages, card);
        std::ranges::move(boxLabelPrint(list, languages, card, wording::Region::UnitedStates),
                          std::back_inserter(cards));
        QCOMPARE(cards.size(), std::size_t{3});
        const QString text = words(onSheets(cards, sizeOf(Paper::A4), true), "lid long.pdf");
        QCOMPARE(text.count(QStringLiteral("R12")), 3);
        QCOMPARE(text.count(QStringLiteral("Card 1 of 2")), 1);
        QCOMPARE(text.count(QStringLiteral("Card 2 of 2")), 1);
        QCOMPARE(text.count(QStringLiteral("CP-Y4")), 2);
    }

    /// What is measured before it is printed takes that height on the page: else one entry runs
    /// into the next.
    void wordsTakeTheHeightThatWasMeasured()
    {
        const auto &polish = m_room.morven().catalogueIn(QStringLiteral("pl"));
        int wrong = 0;
        const PrintPage page{sizeOf(Paper::A4), [&](QPainter &painter) {
                                 PrintSheet sheet(painter, sizeOf(Paper::A4), false);
                                 for (const auto &activity : polish.activities()) {
                                     const auto text = QString::fromStdString(activity.adultLine);
                                     for (int pixels = 26; pixels <= 38; pixels += 2) {
                                         const int measured = heightOfWords(
                                             text, pixels, PrintSheet::Bold, 736, false);
                                         const int taken = sheet.words(
                                             text, pixels, PrintSheet::Bold, {0, 0, 736, 0}, false);
                                         wrong += taken == measured ? 0 : 1;
                                     }
                                 }
                             }};
        QVERIFY(savePdf(m_room.papers(), QStringLiteral("measured.pdf"), {page}));
        QCOMPARE(wrong, 0);
    }

    /// T4: the wrong hand and every swap in words; a second column for special boxes alone.
    void aPackListCallsOutWhatIsSpecial()
    {
        const QString text = plain(
            m_room.printed("Fin", {Print::PackList, Paper::A4, {"en"}}, "pack a4.pdf").text());
        for (int box = 1; box <= 25; ++box)
            QVERIFY2(text.contains(QStringLiteral("K%1 ").arg(box)), qPrintable(text));
        QCOMPARE(text.count(QStringLiteral("Left-handed scissors only.")), 3);
        QCOMPARE(text.count(QStringLiteral("No latex in this box.")), 2);
        QCOMPARE(text.count(QStringLiteral("Silicone loops, not rubber bands.")), 2);
        QCOMPARE(text.count(QStringLiteral("Special: somebody else")), 9);
        QCOMPARE(text.count(QStringLiteral("Second look, by whom")), 9);
        for (const char *banned : {"Bartek", "2021", "llergic", "goal", "Port Sheal"})
            QVERIFY2(!text.contains(QLatin1String(banned)), banned);
        PrintWish byItem{Print::PackList, Paper::A4, {"en"}};
        byItem.byItem = true;
        const QString items = plain(m_room.printed("Fin", byItem, "pack item a4.pdf").text());
        QCOMPARE(items.count(QStringLiteral("Left-handed scissors only.")), 3);
        // 6 pegs in each of 25 boxes (job.md 2.8).
        QVERIFY2(items.contains(QRegularExpression(QStringLiteral("Pegs 150\\b|Clothes pegs 150"))),
                 qPrintable(items));
        QCOMPARE(items.count(QStringLiteral("6 × K")), 25 + 20 + 22 + 2);
    }
};

QTEST_MAIN(TestPrints)
#include "tst_prints.moc"
