#include <QtTest>

#include <QDir>
#include <QImage>
#include <QPainter>
#include <QRegularExpression>
#include <QTemporaryDir>

#include "mobile/app/language.h"
#include "mobile/prints/kite_card.h"
#include "mobile/prints/kite_card_file.h"

#include <array>
#include <cmath>
#include <csignal>

#include <sys/resource.h>

static void openAssets()
{
    Q_INIT_RESOURCE(lidlark_assets);
}

using namespace lidlark::mobile;

/// Guards the kite on paper (checkin.md 11).
class TestKiteCard : public QObject
{
    Q_OBJECT

private:
    static QImage painted(void (*paint)(QPainter &))
    {
        QImage side(kitecard::size, QImage::Format_RGB32);
        side.fill(Qt::white);
        QPainter painter(&side);
        paint(painter);
        return side;
    }

    /// Dark dots in a part of a side, both in tenths of a millimetre.
    static int inkIn(const QImage &side, const QRect &part)
    {
        int dark = 0;
        for (int y = part.top(); y <= part.bottom(); ++y) {
            for (int x = part.left(); x <= part.right(); ++x)
                dark += qGray(side.pixel(x, y)) < 128 ? 1 : 0;
        }
        return dark;
    }

    static QByteArray fileIn(const QString &folder)
    {
        QFile file(QDir(folder).filePath(QStringLiteral("Kite card.pdf")));
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }

    Language m_language{QStringLiteral("en")};

private slots:
    void initTestCase() { openAssets(); }

    /// Source: ISO 216:2007, table 1: A6 is 105 mm x 148 mm. A point is 1/72 inch, an inch 25.4 mm
    /// (ISO 32000-1:2008, 8.3.2.3: the default unit of a PDF page).
    void bothPagesAreA6()
    {
        const QTemporaryDir folder;
        KiteCardFile card;
        card.setProperty("folder", folder.path());
        QVERIFY2(card.save(), qPrintable(card.said()));
        const QRegularExpression box(
            QStringLiteral("/MediaBox \\[\\s*0 0 ([\\d.]+) ([\\d.]+)\\s*\\]"));
        auto pages = box.globalMatch(QString::fromLatin1(fileIn(folder.path())));
        int count = 0;
        for (; pages.hasNext(); ++count) {
            const QRegularExpressionMatch page = pages.next();
            QVERIFY(std::abs(page.captured(1).toDouble() / 72 * 25.4 - 105) <= 0.5);
            QVERIFY(std::abs(page.captured(2).toDouble() / 72 * 25.4 - 148) <= 0.5);
        }
        QCOMPARE(count, 2);
        QVERIFY2(card.said().contains(QStringLiteral("Kite card.pdf")), qPrintable(card.said()));
        QVERIFY2(card.said().contains(QDir(folder.path()).dirName()), qPrintable(card.said()));
    }

    /// checkin.md 11: black line on white, no colour needed.
    void noColourIsNeeded()
    {
        for (const QImage &side : {painted(kitecard::paintFront), painted(kitecard::paintBack)}) {
            for (int y = 0; y < side.height(); ++y) {
                for (int x = 0; x < side.width(); ++x)
                    QVERIFY(QColor(side.pixel(x, y)).hsvSaturation() <= 0);
            }
        }
    }

    /// checkin.md 11 and 13.3: three kites in a column, equal in size and weight; clouds and bag
    /// beside them; the hand at the foot. look.md 5: ink of the three within 7 % of their mean.
    void theChildsSideShowsAllSixAndTheThreeAlike()
    {
        const QImage front = painted(kitecard::paintFront);
        std::array<int, 3> kites{};
        for (int i = 0; i < 3; ++i)
            kites.at(static_cast<std::size_t>(i)) =
                inkIn(front, {70, 180 + i * 361, 580, 234}); // without frame and word
        const int mean = (kites[0] + kites[1] + kites[2]) / 3;
        for (const int ink : kites)
            QVERIFY2(std::abs(ink - mean) <= mean * 7 / 100,
                     qPrintable(QStringLiteral("%1 of %2").arg(ink).arg(mean)));
        QVERIFY(inkIn(front, {720, 180, 260, 380}) > 1000); // clouds
        QVERIFY(inkIn(front, {720, 720, 260, 380}) > 1000); // bag
        QVERIFY(inkIn(front, {60, 1255, 230, 165}) > 1000); // hand
    }

    void theAdultsSideHoldsAllItsLines_data()
    {
        QTest::addColumn<QString>("language");
        for (const char *language : {"en", "pl", "ur"})
            QTest::addRow("%s", language) << QString::fromUtf8(language);
    }

    /// Five lines and three rows to write on, and all of it inside the edge, in every language.
    void theAdultsSideHoldsAllItsLines()
    {
        QFETCH(QString, language);
        m_language.speak(language);
        const QImage back = painted(kitecard::paintBack);
        m_language.speak(QStringLiteral("en"));
        QVERIFY(inkIn(back, {50, 160, 1000, 600}) > 5000);
        QVERIFY(inkIn(back, {80, 1435, 890, 25}) == 0);  // nothing runs into the lower edge
        QVERIFY(inkIn(back, {80, 1340, 890, 90}) > 500); // and who has checked it stands there
        const int left = language == QStringLiteral("ur") ? 100 : 400;
        int rows = 0;
        for (int y = 760; y < 1300; ++y) {
            const bool ruled = inkIn(back, {left, y, 550, 1}) == 550;
            const bool before = inkIn(back, {left, y - 1, 550, 1}) == 550;
            rows += ruled && !before ? 1 : 0;
        }
        QCOMPARE(rows, 3);
    }

    void whatCannotBeWrittenIsSaidAndLeavesNoHalfFile()
    {
        const QTemporaryDir folder;
        // A file where the folder should be: closed to everybody, whoever runs this.
        const QString inTheWay = folder.filePath(QStringLiteral("Documents"));
        QFile file(inTheWay);
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.close();
        KiteCardFile card;
        card.setProperty("folder", inTheWay);
        QVERIFY(!card.save());
        QVERIFY2(card.said().contains(QStringLiteral("could not be saved in Documents")),
                 qPrintable(card.said()));
        QCOMPARE(QDir(folder.path()).entryList(QDir::Files).size(), 1);
        QCOMPARE(QFileInfo(inTheWay).size(), 0);
    }

    /// The phone is full: the system takes the first 4096 bytes and no more.
    void aFullPhoneIsSaidAndLeavesNoHalfFile()
    {
        const QTemporaryDir folder;
        (void)std::signal(SIGXFSZ, SIG_IGN); // so that writing fails, as on a full phone
        rlimit before{};
        QCOMPARE(getrlimit(RLIMIT_FSIZE, &before), 0);
        const rlimit small{4096, before.rlim_max};
        QCOMPARE(setrlimit(RLIMIT_FSIZE, &small), 0);
        KiteCardFile card;
        card.setProperty("folder", folder.path());
        const bool saved = card.save();
        QCOMPARE(setrlimit(RLIMIT_FSIZE, &before), 0);
        QVERIFY(!saved);
        QVERIFY2(card.said().contains(QStringLiteral("Is the phone full")),
                 qPrintable(card.said()));
        QCOMPARE(QDir(folder.path()).entryList(QDir::AllEntries | QDir::NoDotAndDotDot),
                 QStringList());
    }

    /// The last step fails: a folder already has the card's name.
    void aCardThatCannotTakeItsPlaceLeavesNothingBeside()
    {
        const QTemporaryDir folder;
        QVERIFY(QDir(folder.path()).mkpath(QStringLiteral("Kite card.pdf/kept")));
        KiteCardFile card;
        card.setProperty("folder", folder.path());
        QVERIFY(!card.save());
        QVERIFY(!card.said().isEmpty());
        QCOMPARE(QDir(folder.path()).entryList(QDir::AllEntries | QDir::NoDotAndDotDot),
                 QStringList{QStringLiteral("Kite card.pdf")});
    }
};

QTEST_MAIN(TestKiteCard)
#include "tst_kite_card.moc"
