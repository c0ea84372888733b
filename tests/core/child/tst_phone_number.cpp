#include <QtTest>

#include "core/child/home_facts.h"
#include "core/child/phone_number.h"

using namespace lidlark::child;

/// Guards safety.md EM-05: the family's own numbers, and no other.
class TestPhoneNumber : public QObject
{
    Q_OBJECT

private slots:
    void digitsSpacesPlusAndHyphenOnly_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<bool>("isNumber");
        // 112: Directive (EU) 2018/1972, article 109. The others are drawn from no plan.
        QTest::newRow("short") << QByteArray("112") << true;
        QTest::newRow("from abroad") << QByteArray("+44 20-7946 0000") << true;
        QTest::newRow("twenty") << QByteArray("01234567890123456789") << true;
        QTest::newRow("twenty-one") << QByteArray("012345678901234567890") << false;
        QTest::newRow("empty") << QByteArray("") << false;
        QTest::newRow("one digit") << QByteArray("9") << false;
        QTest::newRow("no digit") << QByteArray("+ -") << false;
        QTest::newRow("a letter") << QByteArray("11x2") << false;
        QTest::newRow("a code for the phone") << QByteArray("*#06#") << false;
        QTest::newRow("another way to dial") << QByteArray("112;ext=1") << false;
        QTest::newRow("a new line") << QByteArray("112\n") << false;
        QTest::newRow("other digits") << QByteArray("\xdb\xb1\xdb\xb1\xdb\xb2") << false;
    }
    void digitsSpacesPlusAndHyphenOnly()
    {
        QFETCH(QByteArray, text);
        QFETCH(bool, isNumber);
        QCOMPARE(isPhoneNumber(text.toStdString()), isNumber);
    }

    void whatIsDialledHasNoSpaces()
    {
        QCOMPARE(dialled("112"), std::string("112"));
        QCOMPARE(dialled("+44 20-7946 0000"), std::string("+442079460000"));
        QCOMPARE(dialled("11+2"), std::string("112"));
    }

    /// A malformed value that came from elsewhere has no effect.
    void theSheetTakesNothingThatIsNoNumber()
    {
        const Fact facts[] = {{"", "emergency-number", "112"}, {"", "poison-line", "tel:1"}};
        const HomeSheet sheet = homeSheetFrom({"h"}, facts, {});
        QCOMPARE(sheet.emergencyNumber, std::string("112"));
        QCOMPARE(sheet.poisonLine, std::string());
    }
};

QTEST_APPLESS_MAIN(TestPhoneNumber)
#include "tst_phone_number.moc"
