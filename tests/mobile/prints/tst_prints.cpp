#include <QtTest>

#include <QTemporaryDir>

#include "core/box/box_code.h"
#include "core/sync/consent.h"
#include "core/usecase/play_activity.h"
#include "core/usecase/revise_box.h"
#include "core/usecase/say_statement.h"
#include "core/wording/take_out_words.h"
#include "mobile/bridge/print_pages.h"
#include "mobile/prints/pdf_file.h"
#include "mobile/prints/print_job.h"
#include "mobile/prints/print_language.h"
#include "tests/mobile/prints/printed.h"
#include "tests/support/phone.h"

#include <cmath>
#include <memory>

using namespace lidlark;
using namespace lidlark::mobile;
using namespace lidlark::test;

static void openAssets()
{
    Q_INIT_RESOURCE(lidlark_assets);
    Q_INIT_RESOURCE(lidlark_catalogue);
    Q_INIT_RESOURCE(lidlark_composed);
    Q_INIT_RESOURCE(lidlark_words);
}

/// Guards what comes out of a printer (job.md T5, T6, T7, T12, T13, F7, A4, A9, D2, D9): each print
/// is kept as a file and read back by other programs.
class TestPrints : public QObject
{
    Q_OBJECT

private:
    static constexpr auto contact = "Hallasay team, 01234 567890";

    QTemporaryDir m_folder;
    std::unique_ptr<Household> m_morven;

    /// Where the files stay, for eyes.
    [[nodiscard]] QString papers() const
    {
        return qEnvironmentVariable("LIDLARK_PRINTS", m_folder.filePath(QStringLiteral("papers")));
    }
    [[nodiscard]] std::unique_ptr<Household> open(const char *store) const
    {
        return std::make_unique<Household>(Household::Places{m_folder.filePath(store)},
                                           std::make_unique<StillClock>(islandTime(11, 18, 10)),
                                           std::make_unique<SeededEntropy>("prints"));
    }
    void writeMorven() const
    {
        auto database =
            store::Database::open(m_folder.filePath(QStringLiteral("morven")).toStdString());
        const store::Device device{{"d-morven"}, "Morven", store::Role::Therapist, {}};
        (void)store::DeviceRepository(*database).setDevice(device);
        StillClock clock(islandTime(4, 12, 0));
        SeededEntropy entropy("morven");
        usecase::Workplace morven{*database, realCatalogue(), clock, entropy, device};
        for (const usecase::island::Family &family : usecase::island::families())
            (void)usecase::issueBox(morven, family);
        (void)usecase::setServiceContact(morven, contact);
        (void)usecase::sayStatement(morven, {"h-anya"}, {"p-bartek", "latex", "yes"});
        auto packed = familyOf("Mairead").packed; // job.md scenario 7
        packed.erase({"bands"});
        packed.erase({"balloon"});
        packed[{"loops"}] = 6;
        clock.moveTo(islandTime(11, 10, 0));
        (void)usecase::reviseBox(morven, "Mairead", {}, packed);
    }
    /// Ruth has played; @p yes: and said yes to sharing.
    void writeRuth(const char *store, bool yes) const
    {
        auto morven = therapistWith({"Fin"});
        auto database = store::Database::open(m_folder.filePath(store).toStdString());
        const store::Device device{{"d-ruth"}, "Ruth", store::Role::Parent, {"h-fin"}};
        (void)store::DeviceRepository(*database).setDevice(device);
        StillClock clock(islandTime(10, 18, 0));
        SeededEntropy entropy("ruth");
        usecase::Workplace ruth{*database, realCatalogue(), clock, entropy, device};
        (void)usecase::takeEventsFrom(morven->database, ruth, [](const auto &) { return true; });
        const auto play = usecase::startPlay(ruth, {"Fin", {"slow-oars"}, {}, std::nullopt});
        (void)usecase::noticePhrase(ruth, *play, play::Phrase::AskedAgain);
        if (yes)
            (void)sync::consentToSharing(*database, {"Ruth", usecase::island::dayOne(), 1});
    }

    [[nodiscard]] Printed printed(Household &household, const char *child, const PrintWish &wish,
                                  const QString &file) const
    {
        household.setChild(QString::fromLatin1(child));
        const auto pages = pagesOf(household, wish);
        if (!pages || !savePdf(papers(), file, *pages))
            qFatal("%s: not printed", qPrintable(file));
        return Printed(QDir(papers()).filePath(file));
    }
    [[nodiscard]] Printed printed(const char *child, const PrintWish &wish,
                                  const char *file) const
    {
        return printed(*m_morven, child, wish, QString::fromLatin1(file));
    }

    /// Joined signs as single letters (Unicode NFKC), one kind of space, and one of Arabic digits:
    /// a face may have one sign for two code points.
    static QString plain(QString text)
    {
        text = text.normalized(QString::NormalizationForm_KC);
        QString kept;
        for (const QChar letter : text) {
            const bool arabicDigit = letter >= QChar(0x660) && letter <= QChar(0x669);
            const bool direction = letter.category() == QChar::Other_Format;
            if (!direction)
                kept.append(arabicDigit ? QChar(letter.unicode() + 0x90) : letter);
        }
        return kept.simplified();
    }
    static bool isSize(const QSizeF &size, QSizeF wanted)
    {
        return std::abs(size.width() - wanted.width()) <= 0.5 &&
               std::abs(size.height() - wanted.height()) <= 0.5;
    }
    static QByteArray told(const QSizeF &size)
    {
        return QByteArray::number(size.width()) + " x " + QByteArray::number(size.height());
    }
    /// Every name on a lid list, and its number, in a language.
    void holdsAll(const QString &text, const char *child, const QString &code) const
    {
        m_morven->setChild(QString::fromLatin1(child));
        const auto list = lidListPage(*m_morven);
        const PrintLanguage in(code, m_morven->catalogueIn(code));
        for (const usecase::LidLine &line : list->lines) {
            for (const usecase::LidPart &part : line.parts) {
                const QString name = plain(in.title(part.item, part.pieces));
                for (const QString &word : name.split(u' '))
                    QVERIFY2(text.contains(word, Qt::CaseInsensitive),
                             qPrintable(word + QStringLiteral(" in ") + text));
                // Urdu's own shapes of 4 and 7 are signs of the face that no code point leads to, so
                // no program reads them back; they were looked at.
                static const QRegularExpression unread(QStringLiteral("[\u06F4\u06F7]"));
                const QString number = plain(in.number(part.pieces));
                QVERIFY2(number.contains(unread) || text.contains(number), qPrintable(text));
            }
        }
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
            {"lid letter.pdf", "Mairead", {Print::LidList, Paper::Letter, {"en"}}, 1,
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
        openAssets();
        writeMorven();
        m_morven = open("morven");
        QVERIFY2(m_morven->problem().isEmpty(), qPrintable(m_morven->problem()));
        for (const char *child : {"Fin", "Nuala", "Lewis"}) {
            m_morven->setChild(QString::fromLatin1(child));
            QVERIFY(m_morven->askFor({"dough"}).ok());
        }
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
        const Printed print = printed(all.child, all.wish, all.file);
        QCOMPARE(print.pages(), all.pages);
        QVERIFY2(isSize(print.size(), all.size), told(print.size()));
        const auto fonts = print.fonts();
        QVERIFY(!fonts.isEmpty());
        for (const Printed::Font &font : fonts)
            QVERIFY2(font.embedded, qPrintable(font.name));
        const bool urdu = all.wish.languages.contains(QStringLiteral("ur"));
        const QString face = urdu ? QStringLiteral("NotoNaskhArabic") : QStringLiteral("Andika");
        QVERIFY2(std::ranges::any_of(fonts, [&](const auto &one) { return one.name.startsWith(face); }),
                 qPrintable(face));
        QVERIFY2(!print.bytes().contains("/Subtype /Image"), "not by lines but by dots");
    }

    void nothingIsInColour()
    {
        for (const Case &one : cases()) {
            const QImage picture = printed(one.child, one.wish, one.file).picture(40, false);
            QVERIFY(!picture.isNull());
            for (int y = 0; y < picture.height(); ++y) {
                for (int x = 0; x < picture.width(); ++x)
                    QVERIFY2(QColor(picture.pixel(x, y)).hsvSaturation() == 0, one.file);
            }
        }
    }

    /// T5, A9, scenario 10: the same names, numbers and revision in both languages, and those of
    /// the screen.
    void aLidListSaysTheSameInBothLanguages()
    {
        const Printed print =
            printed("Zoya", {Print::LidList, Paper::A5, {"ur", "en"}}, "lid a5 two.pdf");
        const QString text = plain(print.text());
        holdsAll(text, "Zoya", QStringLiteral("en"));
        holdsAll(text, "Zoya", QStringLiteral("ur"));
        QCOMPARE(text.count(QStringLiteral("R1")), 2);
        QVERIFY2(text.contains(plain(QStringLiteral("جنوری"))), qPrintable(text));
        const QString polish = plain(
            printed("Anya", {Print::LidList, Paper::A6, {"en", "pl"}}, "lid a6 two.pdf").text());
        holdsAll(polish, "Anya", QStringLiteral("pl"));
        QCOMPARE(polish.count(QStringLiteral("R1")), 2);
        QVERIFY2(polish.contains(QStringLiteral("Not in this home: rubber bands")), qPrintable(polish));
        m_morven->setChild(QStringLiteral("Zoya"));
        std::map<ItemId, int> onScreen;
        for (const usecase::BoxItem &item : m_morven->boxItems())
            onScreen[item.row.item] = item.row.expected;
        const auto list = lidListPage(*m_morven);
        for (const usecase::LidLine &line : list->lines) {
            for (const usecase::LidPart &part : line.parts)
                QCOMPARE(onScreen.at(part.item), part.pieces);
        }
    }

    /// Right-to-left right: Urdu stands at the right, and its own page is mirrored.
    void urduStandsAtTheRight()
    {
        const QString both = printed("Zoya", {Print::LidList, Paper::A5, {"ur", "en"}},
                                     "lid a5 two.pdf")
                                 .text();
        const QStringList lines = both.split(u'\n').filter(QStringLiteral("Pegs"));
        QCOMPARE(lines.size(), 1);
        const QString line = plain(lines.constFirst());
        QVERIFY2(line.indexOf(QStringLiteral("Pegs")) < line.indexOf(plain(QStringLiteral("کلپ"))),
                 qPrintable(line));
        const QImage urdu = printed("Zoya", {Print::LidList, Paper::A6, {"ur"}}, "lid a6 ur.pdf")
                                .picture(60, true);
        const QImage english =
            printed("Fin", {Print::LidList, Paper::A6, {"en"}}, "lid a6.pdf").picture(60, true);
        const auto inkAtLeft = [](const QImage &page) {
            int ink = 0;
            for (int y = page.height() / 4; y < page.height() * 3 / 4; ++y) {
                for (int x = page.width() / 10; x < page.width() / 5; ++x)
                    ink += qGray(page.pixel(x, y)) < 128 ? 1 : 0;
            }
            return ink;
        };
        QVERIFY(inkAtLeft(urdu) * 4 < inkAtLeft(english)); // the pictures changed sides
    }

    /// Scenario 7: revision 2, without what it removed.
    void aNewRevisionIsOnThePrint()
    {
        const QString text = plain(
            printed("Mairead", {Print::LidList, Paper::Letter, {"en"}}, "lid letter.pdf").text());
        QVERIFY2(text.contains(QStringLiteral("R2, from 11 January 2027")), qPrintable(text));
        QVERIFY(!text.contains(QStringLiteral("R1")));
        QVERIFY(!text.contains(QStringLiteral("alloon")));
        QVERIFY(text.contains(QStringLiteral("loops"), Qt::CaseInsensitive));
    }

    /// T6, D2, D9: what stands on a label is exactly this, so nothing banned can.
    void aLabelHoldsNothingElse()
    {
        QString text = plain(
            printed("Anya", {Print::Label, Paper::A4, {"en", "pl"}}, "label a4.pdf").text());
        QVERIFY2(text.contains(QStringLiteral("latex-free home")), qPrintable(text));
        QCOMPARE(text.count(QStringLiteral("Anya")), 9);
        for (const char *banned : {"Bartek", "Marta", "2021", "2022", "2027", "January", "year",
                                   "month", "llergy", "lergi", "goal", "Port Sheal"})
            QVERIFY2(!text.contains(QLatin1String(banned), Qt::CaseInsensitive), banned);
        const QString polish = plain(PrintLanguage(QStringLiteral("pl"), realCatalogue())
                                         .tell(wording::homeLabelWord(child::Avoided::Latex)));
        for (const QString &said :
             {QStringLiteral("Anya"), QStringLiteral("Box"),
              QString::fromStdString(box::boxCode({"b-anya"})), QStringLiteral("latex-free home"),
              polish, QStringLiteral("Found it, or a question?"), QString::fromLatin1(contact)}) {
            QVERIFY2(text.contains(said), qPrintable(said));
            text.remove(said);
        }
        QCOMPARE(text.simplified(), QString());
    }

    /// Nobody's goal, home or birth month, for every child of the island.
    void noLabelTellsOfAChild()
    {
        const QString text =
            plain(printed("Fin", {Print::Labels, Paper::Letter, {"en"}}, "labels letter.pdf").text());
        for (const usecase::island::Family &family : usecase::island::families()) {
            QVERIFY2(text.contains(QString::fromStdString(family.child)), qPrintable(text));
            for (const usecase::island::Home &home : family.homes)
                QVERIFY(home.name == "Home" || !text.contains(QString::fromStdString(home.name)));
            for (const child::Goal &goal : family.goals) {
                for (const QString &word : QString::fromStdString(goal.words).split(u' ')) {
                    if (word.size() > 3)
                        QVERIFY2(!text.contains(word, Qt::CaseInsensitive), qPrintable(word));
                }
            }
        }
    }

    /// F7: 15 or more on one page, each with its name; a wrong one cannot be there: tst_print_pages.
    void aTravelListIsOnePage()
    {
        const QString text =
            plain(printed("Fin", {Print::Travel, Paper::A4, {"en"}}, "travel a4.pdf").text());
        int found = 0;
        m_morven->setChild(QStringLiteral("Fin"));
        const auto travel = travelPage(*m_morven, QStringLiteral("en"));
        for (const safety::Admitted &entry : travel->entries)
            found += text.contains(QString::fromStdString(entry.activity().name)) ? 1 : 0;
        QVERIFY2(found >= 15, qPrintable(QString::number(found)));
        QVERIFY2(text.contains(QStringLiteral("first")), qPrintable(text)); // no lost letters
    }

    void aTallyIsDatedAndSaysTheListInForce()
    {
        const QString text =
            plain(printed("Fin", {Print::Tally, Paper::A4, {"en"}}, "tally a4.pdf").text());
        for (const char *words : {"Week from Monday, 11 January 2027", "R1", "Used up", "Lost",
                                  "Broken", "Dried out", "Counted", "Stick-on eyes",
                                  "Keep small children away until found."})
            QVERIFY2(text.contains(QLatin1String(words)), words);
        const QString polish =
            plain(printed("Anya", {Print::Tally, Paper::A4, {"pl"}, false, 1}, "tally a4 pl.pdf")
                      .text());
        QVERIFY2(polish.contains(QStringLiteral("18 stycznia 2027")), qPrintable(polish));
        // Words that guard somebody: nobody has checked the Polish, so the English stands under it.
        QVERIFY2(polish.contains(QStringLiteral("Keep small children away until found.")),
                 qPrintable(polish));
    }

    /// T12, D3, D4: plays only with a yes to sharing that stands, and asked for on this page.
    void aSummaryTellsPlaysWithAYesOnly()
    {
        const QString playIs = QStringLiteral("Slow Oars");
        writeRuth("ruth", false);
        auto ruth = open("ruth");
        const PrintWish wish{Print::Summary, Paper::A4, {"en"}, true};
        QVERIFY(!plain(printed(*ruth, "Fin", wish, QStringLiteral("summary no yes.pdf")).text())
                     .contains(playIs));
        ruth.reset();
        writeRuth("ruth yes", true);
        ruth = open("ruth yes");
        const QString told =
            plain(printed(*ruth, "Fin", wish, QStringLiteral("summary yes.pdf")).text());
        QVERIFY2(told.contains(playIs + QStringLiteral(". Asked for it again.")), qPrintable(told));
        QVERIFY2(told.contains(QStringLiteral("with the yes of Ruth, 11 January 2027")),
                 qPrintable(told));
        QVERIFY(!plain(printed(*ruth, "Fin", {Print::Summary, Paper::A4, {"en"}, false},
                               QStringLiteral("summary unasked.pdf"))
                           .text())
                     .contains(playIs));
        for (const QString &text : {told}) {
            QVERIFY(!text.contains(u'%'));
            for (const char *scored : {"streak", "score of", "times", "T-score", "points", "+1",
                                       "-2", "in a row", "missed", "every day"})
                QVERIFY2(!text.contains(QLatin1String(scored), Qt::CaseInsensitive), scored);
            QVERIFY(text.contains(QStringLiteral("Now: Holds it steady")));
            QVERIFY(text.contains(QStringLiteral("What we do not know")));
        }
    }

    void aRoundIsByItemThenBox()
    {
        const QString text =
            plain(printed("Fin", {Print::Restock, Paper::A4, {"en"}}, "restock a4.pdf").text());
        QVERIFY2(text.contains(QStringLiteral("Boxes that wait: ")), qPrintable(text));
        const auto dough = text.indexOf(QStringLiteral("Dough"));
        QVERIFY2(dough >= 0, qPrintable(text));
        for (const char *box : {"Fin", "Lewis", "Nuala"})
            QVERIFY2(text.indexOf(QStringLiteral("1 × ") + QLatin1String(box), dough) > dough,
                     qPrintable(text));
    }
};

QTEST_MAIN(TestPrints)
#include "tst_prints.moc"
