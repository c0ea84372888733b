#include "tests/contact/contact_sheet.h"

#include <QDir>
#include <QTest>

using namespace lidlark;

/// The committed contact sheets show the drawings as they are now: somebody was to look at them.
class TestContactSheets : public QObject
{
    Q_OBJECT

private slots:
    void everyPageIsOfToday();
    void noPageIsLeftOver();
    void aPageRemembersItsDrawings();
};

void TestContactSheets::everyPageIsOfToday()
{
    for (const contact::Sheet &sheet : contact::sheetsOfShippedDrawings()) {
        const QImage page(contact::folder() + "/" + sheet.name + ".png");
        QVERIFY2(!page.isNull(), qPrintable(sheet.name + " is missing: run lidlark-contact"));
        QVERIFY2(contact::digestIn(page) == contact::digestOf(sheet),
                 qPrintable(sheet.name + " is older than its drawings: run lidlark-contact"));
    }
}

void TestContactSheets::noPageIsLeftOver()
{
    QStringList expected;
    for (const contact::Sheet &sheet : contact::sheetsOfShippedDrawings())
        expected << sheet.name + ".png";
    expected.sort();
    QCOMPARE(QDir(contact::folder()).entryList({"*.png"}, QDir::Files, QDir::Name), expected);
}

void TestContactSheets::aPageRemembersItsDrawings()
{
    contact::Sheet sheet = contact::sheetsOfShippedDrawings().front();
    const QString before = contact::digestOf(sheet);
    QCOMPARE(contact::digestIn(contact::rendered(sheet)), before);
    sheet.rows.front().front().svg.replace("#EFBF72", "#FFFBF2");
    QVERIFY(contact::digestOf(sheet) != before);
}

QTEST_MAIN(TestContactSheets)
#include "tst_contact_sheets.moc"
