#include <QTest>

#include "core/sync/join_words.h"
#include "core/sync/typing_slips.h"

#include <algorithm>
#include <set>

using namespace lidlark::sync;

/// Guards the list that joining codes are made of: every rule its header states, word by word.
class TestJoinWords : public QObject
{
    Q_OBJECT

private slots:
    void aWordIsThreeToSevenSmallLetters()
    {
        for (const std::string_view word : joinWords()) {
            QVERIFY2(word.size() >= 3 && word.size() <= 7, word.data());
            QVERIFY2(std::ranges::all_of(word, [](char c) { return c >= 'a' && c <= 'z'; }),
                     word.data());
        }
    }

    void theyStandInTheOrderOfTheAlphabet() { QVERIFY(std::ranges::is_sorted(joinWords())); }

    void fourLettersTellThemApart()
    {
        std::set<std::string_view> starts;
        for (const std::string_view word : joinWords())
            QVERIFY2(starts.insert(word.substr(0, tellingLetters)).second, word.data());
        QCOMPARE(starts.size(), joinWordCount);
    }

    void noneBeginsAnother()
    {
        for (std::size_t i = 1; i < joinWordCount; ++i)
            QVERIFY2(!joinWords()[i].starts_with(joinWords()[i - 1]), joinWords()[i].data());
    }

    void oneSlipNeverMakesOneOfAnother()
    {
        for (std::size_t i = 0; i < joinWordCount; ++i) {
            for (std::size_t j = 0; j < i; ++j) {
                QVERIFY2(
                    typingSlips(joinWords()[i], joinWords()[j]) > 1,
                    (std::string(joinWords()[i]) + ", " + std::string(joinWords()[j])).c_str());
            }
        }
    }

    void aWordIsFoundByItsFirstFourLetters()
    {
        for (std::size_t i = 0; i < joinWordCount; ++i) {
            const std::string_view word = joinWords()[i];
            QCOMPARE(joinWordAt(word), std::optional(i));
            for (std::size_t letters = 4; letters < word.size(); ++letters)
                QCOMPARE(joinWordAt(word.substr(0, letters)), std::optional(i));
            QCOMPARE(joinWordAt(std::string(word) + "q"), std::nullopt);
        }
    }

    void noOtherWordIsFound()
    {
        for (const char *word :
             {"", "a", "zzzz", "app", "Apple", "{", "\x7f", "aaaa", "co", "kettel"})
            QCOMPARE(joinWordAt(word), std::nullopt);
    }

    /// Source: the distance of Damerau, "A technique for computer detection and correction of
    /// spelling errors", 1964, which counts just these four; the numbers were counted by hand.
    void slipsAreCounted_data()
    {
        QTest::addColumn<QString>("other");
        QTest::addColumn<int>("slips");
        QTest::newRow("none") << "kettle" << 0;
        QTest::newRow("a letter too few") << "kettl" << 1;
        QTest::newRow("a letter too many") << "kettlee" << 1;
        QTest::newRow("another letter") << "kettke" << 1;
        QTest::newRow("two exchanged") << "ketlte" << 1;
        QTest::newRow("the first two exchanged") << "ekttle" << 1;
        QTest::newRow("two of them") << "ketltee" << 2;
        QTest::newRow("nothing typed") << "" << 6;
        QTest::newRow("no letter in common") << "zzzzzz" << 6;
    }
    void slipsAreCounted()
    {
        QFETCH(QString, other);
        QFETCH(int, slips);
        QCOMPARE(typingSlips("kettle", other.toStdString()), static_cast<std::size_t>(slips));
        QCOMPARE(typingSlips(other.toStdString(), "kettle"), static_cast<std::size_t>(slips));
    }
};

QTEST_APPLESS_MAIN(TestJoinWords)
#include "tst_join_words.moc"
