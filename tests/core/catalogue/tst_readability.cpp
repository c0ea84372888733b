#include <QTest>

#include "core/catalogue/readability.h"

using namespace lidlark::catalogue;

namespace {

/// The worked example of the Coleman-Liau index: the abstract of the paper itself, with its 639
/// letters, 119 words and 5 sentences, and its grade, 14.5.
/// Source: Coleman and Liau 1975, J. Appl. Psychol. 60:283, abstract; counted and graded in the
/// Wikipedia article "Coleman-Liau index" (L = 537, S = 4.20, grade 14.5), and graded 14.53042
/// by the test of the `coleman-liau` package (npm), which gives the same three counts.
constexpr std::string_view paperAbstract =
    "Existing computer programs that measure readability are based largely upon subroutines which "
    "estimate number of syllables, usually by counting vowels. The shortcoming in estimating "
    "syllables is that it necessitates keypunching the prose into the computer. There is no need "
    "to estimate syllables since word length in letters is a better predictor of readability than "
    "word length in syllables. Therefore, a new readability formula was computed that has for its "
    "predictors letters per 100 words and sentences per 100 words. Both predictors can be counted "
    "by an optical scanning device, and thus the formula makes it economically feasible for an "
    "organization such as the U.S. Office of Education to calibrate the readability of all "
    "textbooks for the public school system.";

} // namespace

class TestReadability : public QObject
{
    Q_OBJECT

private slots:
    void theWorkedExampleIsCountedAndGraded();
    void sentencesEndWhereAReaderStops_data();
    void sentencesEndWhereAReaderStops();
    void wordsAreRunsBetweenSpaces_data();
    void wordsAreRunsBetweenSpaces();
    void marksAreNoLetters();
    void longerWordsAndSentencesAreHarder();
};

void TestReadability::theWorkedExampleIsCountedAndGraded()
{
    const TextCount count = countsOf(paperAbstract);
    QCOMPARE(count.letters, 639);
    QCOMPARE(count.words, 119);
    QCOMPARE(count.sentences, 5);
    QVERIFY(std::abs(schoolGradeOf(count) - 14.53042) < 0.000005);
}

void TestReadability::sentencesEndWhereAReaderStops_data()
{
    QTest::addColumn<QString>("text");
    QTest::addColumn<QStringList>("sentences");
    QTest::newRow("two") << "Lid on. Sit down." << QStringList{"Lid on.", "Sit down."};
    QTest::newRow("none at the end") << "Lid on. Sit down" << QStringList{"Lid on.", "Sit down"};
    QTest::newRow("asked") << "Where next? There." << QStringList{"Where next?", "There."};
    QTest::newRow("a number begins one")
        << "Sit. 2 cm is enough." << QStringList{"Sit.", "2 cm is enough."};
    QTest::newRow("a size is none")
        << "Roll it 1.5 cm thick." << QStringList{"Roll it 1.5 cm thick."};
    QTest::newRow("small letters go on") << "About 3 cm. wide." << QStringList{"About 3 cm. wide."};
    QTest::newRow("initials go on")
        << "The U.S. Office reads." << QStringList{"The U.S. Office reads."};
    QTest::newRow("quotes close with it")
        << "Say \"Go.\" Then wait." << QStringList{"Say \"Go.\"", "Then wait."};
    QTest::newRow("curly quotes too")
        << QString::fromUtf8("Say \u201CGo.\u201D Then wait.")
        << QStringList{QString::fromUtf8("Say \u201CGo.\u201D"), "Then wait."};
    QTest::newRow("colons and semicolons end none")
        << "Sit: feet flat; brakes on." << QStringList{"Sit: feet flat; brakes on."};
    QTest::newRow("dots alone are none") << "Wait ... Now." << QStringList{"Wait ...", "Now."};
    QTest::newRow("nothing") << "  " << QStringList{};
}

void TestReadability::sentencesEndWhereAReaderStops()
{
    QFETCH(QString, text);
    QFETCH(QStringList, sentences);
    QStringList found;
    const std::string bytes = text.toStdString();
    for (const std::string_view sentence : sentencesIn(bytes))
        found << QString::fromUtf8(sentence.data(), static_cast<qsizetype>(sentence.size()));
    QCOMPARE(found, sentences);
    QCOMPARE(countsOf(bytes).sentences, static_cast<int>(sentences.size()));
}

void TestReadability::wordsAreRunsBetweenSpaces_data()
{
    QTest::addColumn<QString>("text");
    QTest::addColumn<int>("words");
    QTest::newRow("plain") << "Two cups side by side" << 5;
    QTest::newRow("hyphens and marks stay inside") << "The child's finger-tip" << 3;
    QTest::newRow("a dash is none") << QString::fromUtf8("left \u2013 right") << 2;
    QTest::newRow("a marked letter is one") << QString::fromUtf8("\u00E0 table") << 2;
    QTest::newRow("numbers are") << "60 mm" << 2;
    QTest::newRow("nothing") << "" << 0;
}

void TestReadability::wordsAreRunsBetweenSpaces()
{
    QFETCH(QString, text);
    QFETCH(int, words);
    QCOMPARE(wordsIn(text.toStdString()), words);
}

void TestReadability::marksAreNoLetters()
{
    QCOMPARE(countsOf("ab-c, 'd' 12.").letters, 6);
    QCOMPARE(countsOf("caf\u00E9 \u2013 \u201Cx\u201D").letters, 5);
}

void TestReadability::longerWordsAndSentencesAreHarder()
{
    QCOMPARE(schoolGradeOf(countsOf("")), 0.0);
    const double easy = schoolGradeOf(countsOf("Sit down. Look up. Wait."));
    QVERIFY(schoolGradeOf(countsOf("Sit down and look up and wait.")) > easy);
    QVERIFY(schoolGradeOf(countsOf("Position yourself. Observe. Continue waiting.")) > easy);
}

QTEST_APPLESS_MAIN(TestReadability)
#include "tst_readability.moc"
