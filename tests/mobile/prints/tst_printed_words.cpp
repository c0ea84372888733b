#include <QtTest>

#include "core/box/box_code.h"
#include "core/wording/take_out_words.h"
#include "mobile/prints/print_language.h"
#include "tests/mobile/prints/print_room.h"
#include "tests/support/shared_play.h"

using namespace lidlark;
using namespace lidlark::mobile;
using namespace lidlark::test;

/// Guards what stands on the prints, as other programs read it (job.md T5, T6, T12, T13, F7, A9,
/// D2, D3, D4, D9).
class TestPrintedWords : public QObject
{
    Q_OBJECT

private:
    PrintRoom m_room;

    /// Every name on a lid list, and its number, in a language.
    void holdsAll(const QString &text, const char *child, const QString &code) const
    {
        m_room.morven().setChild(QString::fromLatin1(child));
        const auto list = lidListPage(m_room.morven());
        const PrintLanguage in(code, m_room.morven().catalogueIn(code));
        for (const usecase::LidLine &line : list->lines) {
            for (const usecase::LidPart &part : line.parts) {
                const QString name = plain(in.title(part.item, part.pieces));
                for (const QString &word : name.split(u' '))
                    QVERIFY2(text.contains(word, Qt::CaseInsensitive),
                             qPrintable(word + QStringLiteral(" in ") + text));
                // Urdu's own shapes of 4 and 7 are signs of the face that no code point leads to,
                // so no program reads them back; they were looked at.
                static const QRegularExpression unread(QStringLiteral("[\u06F4\u06F7]"));
                const QString number = plain(in.number(part.pieces));
                QVERIFY2(number.contains(unread) || text.contains(number), qPrintable(text));
            }
        }
    }

private slots:
    void initTestCase() { m_room.open(); }

    /// T5, A9, scenario 10: the same names, numbers and revision in both languages, and those of
    /// the screen.
    void aLidListSaysTheSameInBothLanguages()
    {
        const Printed print =
            m_room.printed("Zoya", {Print::LidList, Paper::A5, {"ur", "en"}}, "lid a5 two.pdf");
        const QString text = plain(print.text());
        holdsAll(text, "Zoya", QStringLiteral("en"));
        holdsAll(text, "Zoya", QStringLiteral("ur"));
        QCOMPARE(text.count(QStringLiteral("R1")), 4); // the list, and the words that go with it
        QVERIFY2(text.contains(plain(QStringLiteral("جنوری"))), qPrintable(text));
        const QString polish = plain(
            m_room.printed("Anya", {Print::LidList, Paper::A6, {"en", "pl"}}, "lid a6 two.pdf")
                .text());
        holdsAll(polish, "Anya", QStringLiteral("pl"));
        QCOMPARE(polish.count(QStringLiteral("R1")), 4);
        // Two columns: what is read line by line meets the other language in between.
        for (const char *part : {"Not in this home: rubber", "bands, balloons, slit ball."})
            QVERIFY2(polish.contains(QString::fromUtf8(part)), qPrintable(polish));
        m_room.morven().setChild(QStringLiteral("Zoya"));
        std::map<ItemId, int> onScreen;
        for (const usecase::BoxItem &item : m_room.morven().boxItems())
            onScreen[item.row.item] = item.row.expected;
        const auto list = lidListPage(m_room.morven());
        for (const usecase::LidLine &line : list->lines) {
            for (const usecase::LidPart &part : line.parts)
                QCOMPARE(onScreen.at(part.item), part.pieces);
        }
    }

    /// Right-to-left right: Urdu stands at the right, and its own page is mirrored.
    void urduStandsAtTheRight()
    {
        const QString both =
            m_room.printed("Zoya", {Print::LidList, Paper::A5, {"ur", "en"}}, "lid a5 two.pdf")
                .text();
        const QStringList lines = both.split(u'\n').filter(QStringLiteral("Pegs"));
        QVERIFY(!lines.isEmpty());
        const QString line = plain(lines.constFirst()); // of the list; its back speaks of them too
        QVERIFY2(line.indexOf(QStringLiteral("Pegs")) < line.indexOf(plain(QStringLiteral("کلپ"))),
                 qPrintable(line));
        const QImage urdu =
            m_room.printed("Zoya", {Print::LidList, Paper::A6, {"ur"}}, "lid a6 ur.pdf")
                .picture(60, true);
        const QImage english =
            m_room.printed("Fin", {Print::LidList, Paper::A6, {"en"}}, "lid a6.pdf")
                .picture(60, true);
        // The pictures' column, from either edge.
        const auto inkIn = [](const QImage &page, bool right) {
            int ink = 0;
            for (int y = page.height() / 4; y < page.height() * 3 / 4; ++y) {
                for (int x = page.width() / 10; x < page.width() / 5; ++x) {
                    const int at = right ? page.width() - 1 - x : x;
                    ink += qGray(page.pixel(at, y)) < 128 ? 1 : 0;
                }
            }
            return ink;
        };
        QVERIFY(inkIn(urdu, true) > inkIn(urdu, false) * 5 / 4);
        QVERIFY(inkIn(english, false) > inkIn(english, true) * 5 / 4);
    }

    /// Scenario 7: revision 2, without what it removed.
    void aNewRevisionIsOnThePrint()
    {
        const QString text = plain(
            m_room.printed("Mairead", {Print::LidList, Paper::Letter, {"en"}}, "lid letter.pdf")
                .text());
        QVERIFY2(text.contains(QStringLiteral("R2, from 11 January 2027")), qPrintable(text));
        QVERIFY(!text.contains(QStringLiteral("R1")));
        QVERIFY(!text.contains(QStringLiteral("alloon")));
        QVERIFY(text.contains(QStringLiteral("loops"), Qt::CaseInsensitive));
    }

    /// T6, D2, D9: what stands on a label is exactly this, so nothing banned can.
    void aLabelHoldsNothingElse()
    {
        QString text = plain(
            m_room.printed("Anya", {Print::Label, Paper::A4, {"en", "pl"}}, "label a4.pdf").text());
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
              polish, QStringLiteral("Found it, or a question?"),
              QString::fromLatin1(PrintRoom::contact)}) {
            QVERIFY2(text.contains(said), qPrintable(said));
            text.remove(said);
        }
        QCOMPARE(text.simplified(), QString());
    }

    /// Nobody's goal, home or birth month, for every child of the island.
    void noLabelTellsOfAChild()
    {
        const QString text =
            plain(m_room.printed("Fin", {Print::Labels, Paper::Letter, {"en"}}, "labels letter.pdf")
                      .text());
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

    /// F7: 15 or more on one page, each with its name; a wrong one cannot be there:
    /// tst_print_pages.
    void aTravelListIsOnePage()
    {
        const QString text = plain(
            m_room.printed("Fin", {Print::Travel, Paper::A4, {"en"}}, "travel a4.pdf").text());
        int found = 0;
        m_room.morven().setChild(QStringLiteral("Fin"));
        const auto travel = travelPage(m_room.morven(), QStringLiteral("en"));
        for (const safety::Admitted &entry : travel->entries)
            found += text.contains(QString::fromStdString(entry.activity().name)) ? 1 : 0;
        QVERIFY2(found >= 15, qPrintable(QString::number(found)));
        QVERIFY2(text.contains(QStringLiteral("first")), qPrintable(text)); // no lost letters
    }

    void aTallyIsDatedAndSaysTheListInForce()
    {
        const QString text =
            plain(m_room.printed("Fin", {Print::Tally, Paper::A4, {"en"}}, "tally a4.pdf").text());
        for (const char *words :
             {"Week from Monday, 11 January 2027", "R1", "Used up", "Lost", "Broken", "Dried out",
              "Counted", "Stick-on eyes", "Keep small children away until found."})
            QVERIFY2(text.contains(QLatin1String(words)), words);
        const QString polish = plain(
            m_room.printed("Anya", {Print::Tally, Paper::A4, {"pl"}, false, 1}, "tally a4 pl.pdf")
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
        m_room.writeRuth("ruth", false);
        auto ruth = m_room.phone("ruth");
        const PrintWish wish{Print::Summary, Paper::A4, {"en"}, true};
        QVERIFY(
            !plain(m_room.printed(*ruth, "Fin", wish, QStringLiteral("summary no yes.pdf")).text())
                 .contains(playIs));
        ruth.reset();
        m_room.writeRuth("ruth yes", true);
        ruth = m_room.phone("ruth yes");
        const QString told =
            plain(m_room.printed(*ruth, "Fin", wish, QStringLiteral("summary yes.pdf")).text());
        QVERIFY2(told.contains(playIs + QStringLiteral(". Asked for it again.")), qPrintable(told));
        QVERIFY2(told.contains(QStringLiteral("with the yes of Ruth, 11 January 2027")),
                 qPrintable(told));
        QVERIFY(!plain(m_room
                           .printed(*ruth, "Fin", {Print::Summary, Paper::A4, {"en"}, false},
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

    /// T12 "what was played (if shared)"; where nothing is shared, nothing is said of playing.
    void aTherapistsSummaryTellsWhatTheFamilyShares()
    {
        const QString playIs = QStringLiteral("Slow Oars");
        const PrintWish wish{Print::Summary, Paper::A4, {"en"}};
        const QString before = plain(m_room.printed("Lewis", wish, "summary unshared.pdf").text());
        QVERIFY2(before.contains(QStringLiteral("It is the family's own")), qPrintable(before));
        QVERIFY(!before.contains(QStringLiteral("Nothing is written down")));
        usecase::Workplace &morven = m_room.morven().workplace();
        const Day today = usecase::island::dayOne();
        QVERIFY(takeSharedPlay(morven, "lewis", {today - 60, PartOfDay::Evening}, "coast", 1));
        QCOMPARE(plain(m_room.printed("Lewis", wish, "summary old.pdf").text()), before);
        QVERIFY(takeSharedPlay(morven, "lewis", {today - 1, PartOfDay::Evening}, "slow-oars", 2,
                               play::Phrase::AskedAgain));
        const QString told = plain(m_room.printed("Lewis", wish, "summary shared.pdf").text());
        QVERIFY2(told.contains(playIs + QStringLiteral(". Asked for it again.")), qPrintable(told));
        QVERIFY2(told.contains(QStringLiteral("as far as the family shares it")), qPrintable(told));
        QVERIFY(!told.contains(QStringLiteral("with the yes of")) && !told.contains(u'%'));
    }

    void aRoundIsByItemThenBox()
    {
        const QString text = plain(
            m_room.printed("Fin", {Print::Restock, Paper::A4, {"en"}}, "restock a4.pdf").text());
        QVERIFY2(text.contains(QStringLiteral("Boxes that wait: ")), qPrintable(text));
        const auto dough = text.indexOf(QStringLiteral("Dough"));
        QVERIFY2(dough >= 0, qPrintable(text));
        for (const char *box : {"Fin", "Lewis", "Nuala"})
            QVERIFY2(text.indexOf(QStringLiteral("1 × ") + QLatin1String(box), dough) > dough,
                     qPrintable(text));
    }

    /// In two languages each name has its row to itself, and the box its code.
    void twoLanguagesFindRoomInARow()
    {
        for (const Paper paper : {Paper::A6, Paper::Letter}) {
            const Printed print =
                m_room.printed("Fin", {Print::LidList, paper, {"pl", "ur"}}, "lid pl ur.pdf");
            const QRectF pegs = print.place(QStringLiteral("Klamerki"));
            const QRectF scissors = print.place(QStringLiteral("Para"));
            const qreal high = scissors.top() - pegs.top();
            QVERIFY2(high > 0, qPrintable(print.text()));
            const qreal names = print.place(QStringLiteral("sznurówka")).bottom() -
                                print.place(QStringLiteral("Karta")).top();
            QVERIFY2(names > 0 && names <= high, qPrintable(QString::number(names / high)));
            m_room.morven().setChild(QStringLiteral("Fin"));
            const QString code = QString::fromStdString(lidListPage(m_room.morven())->code);
            QVERIFY2(print.text().contains(code), qPrintable(print.text()));
        }
    }

    /// D12: no word that a regulation prescribes is missing when a box goes on by paper. Source of
    /// the words: safety.md 2, rows L-1, L-2 and L-7, and there 16 CFR 1500.19(b) as ONIX code list
    /// 143 reproduces it. In Fin's box are balloons and small pieces; Anya's home takes no latex.
    void theWordsOfABoxGoWithItsLidList()
    {
        const QString small =
            QStringLiteral("WARNING: CHOKING HAZARD—Small parts. Not for children under 3 yrs.");
        const QString balloons = QStringLiteral(
            "WARNING: CHOKING HAZARD—Children under 8 yrs. can choke or suffocate on uninflated or "
            "broken balloons. Adult supervision required. Keep uninflated balloons from children. "
            "Discard broken balloons at once.");
        PrintWish wish{Print::LidList, Paper::A5, {"pl"}};
        wish.labels = wording::Region::UnitedStates;
        const QString american = plain(m_room.printed("Fin", wish, "lid a5 us.pdf").text());
        QVERIFY2(american.contains(balloons), qPrintable(american));
        QVERIFY2(american.indexOf(balloons) < american.indexOf(small), qPrintable(american));
        QVERIFY(american.contains(QStringLiteral("16 CFR 1500.19(b)")));
        wish.languages = {"ur"}; // the source runs as the words it is about, and not from the right
        const Printed urdu = m_room.printed("Fin", wish, "lid a5 ur us.pdf");
        QVERIFY(urdu.place(QStringLiteral("16")).right() > 0);
        QVERIFY(urdu.place(QStringLiteral("16")).right() <
                urdu.place(QStringLiteral("CFR")).left());
        wish = {Print::LidList, Paper::A5, {"en"}};
        wish.labels = wording::Region::Europe;
        const QString european = plain(m_room.printed("Fin", wish, "lid a5 eu.pdf").text());
        for (const char *words :
             {"Words that go with this box", "Stick-on eyes", "Balloons",
              "Warning! Children under eight years can choke or suffocate on uninflated or broken "
              "balloons. Adult supervision required. Keep uninflated balloons from children. "
              "Discard broken balloons at once."})
            QVERIFY2(european.contains(QLatin1String(words)), qPrintable(european));
        const QString without = plain(m_room.printed("Anya", wish, "lid a5 anya.pdf").text());
        QVERIFY2(!without.contains(QStringLiteral("uninflated")), qPrintable(without));
    }
};

QTEST_MAIN(TestPrintedWords)
#include "tst_printed_words.moc"
