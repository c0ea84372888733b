#include <QTest>

#include "catalogue_samples.h"

#include <random>

using namespace samples;

// Texts that are no catalogue files at all. None may stop the loader or take another file down.

class TestCatalogueFiles : public QObject
{
    Q_OBJECT

private slots:
    void aFileThatIsNoRecordIsNamed_data();
    void aFileThatIsNoRecordIsNamed();
    void anyScriptIsRead_data();
    void anyScriptIsRead();
    void noTextWhateverThrows();
};

void TestCatalogueFiles::aFileThatIsNoRecordIsNamed_data()
{
    QTest::addColumn<QByteArray>("text");
    QTest::addColumn<int>("line");
    QTest::addColumn<QString>("reason");
    const auto row = [](const char *name, const QByteArray &text, int line, const char *reason) {
        QTest::newRow(name) << text << line << reason;
    };
    row("empty", "", 0, "is empty");
    row("spaces only", "   \n\n", 0, "is empty");
    row("a comment only", "# nothing\n", 0, "is empty");
    row("an empty document", "---\n", 0, "is empty");
    row("a list", "- a\n- b\n", 1, "must be a group of named fields");
    row("a word", "hello\n", 1, "must be a group of named fields");
    row("two documents", "a: 1\n---\nb: 2\n", 3, "one entry, not several");
    row("a tab for an indent", "a:\n\tb: 1\n", 2, "not readable as YAML");
    row("a bracket never closed", "a: [1, 2\n", 2, "not readable as YAML");
    // RFC 3629 sections 3 and 10: overlong forms, surrogates, values above U+10FFFF, lone bytes.
    row("a lone continuation byte", QByteArray("a: \x80\n", 5), 0, "not plain UTF-8");
    row("an overlong slash", QByteArray("a: \xC0\xAF\n", 6), 0, "not plain UTF-8");
    row("an overlong slash of three bytes", QByteArray("a: \xE0\x80\xAF\n", 7), 0,
        "not plain UTF-8");
    row("a surrogate", QByteArray("a: \xED\xA0\x80\n", 7), 0, "not plain UTF-8");
    row("beyond U+10FFFF", QByteArray("a: \xF4\x90\x80\x80\n", 8), 0, "not plain UTF-8");
    row("a torn letter at the end", QByteArray("a: \xE2\x82", 5), 0, "not plain UTF-8");
    row("Latin-1", QByteArray("a: caf\xE9 au lait\n"), 0, "not plain UTF-8");
    row("UTF-16",
        QByteArray("\xFF\xFE"
                   "a\0:\0",
                   6),
        0, "not plain UTF-8");
    row("a zero byte", QByteArray("a: \0b\n", 6), 0, "not plain UTF-8");
    row("a byte too large", "a: " + QByteArray(qsizetype{256} * 1024, 'x') + "\n", 0,
        "larger than 256 KiB");
    // The shape of the well-known "billion laughs" file, which grows tenfold a line.
    row("aliases that multiply",
        "a: &a [x, x]\nb: &b [*a, *a, *a]\nc: &c [*b, *b, *b]\nd: [*c, *c, *c]\n", 1,
        "an anchor (&) is not allowed");
    row("an alias of itself", "a: &a [*a]\n", 1, "is not allowed");
    row("a type mark", "a: !thing {b: 1}\n", 1, "a type mark (!) is not allowed");
    row("brackets nested deeply", "a: " + QByteArray(100'000, '[') + QByteArray(100'000, ']'), 1,
        "nested too deeply");
    row("braces nested deeply", "a: " + QByteArray("{a: ").repeated(60'000), 1,
        "nested too deeply");
    row("dashes nested deeply", QByteArray("- ").repeated(100'000) + "x", 1, "nested too deeply");
    row("too many values", "a: [" + QByteArray("1,").repeated(50'000) + "1]\n", 1,
        "too many values");
    row("a group for a name", "{a: 1}: 2\n", 1, "must be one word");
}

void TestCatalogueFiles::aFileThatIsNoRecordIsNamed()
{
    QFETCH(QByteArray, text);
    QFETCH(int, line);
    QFETCH(QString, reason);
    std::vector<SourceFile> activities{activityFile(soundActivity), {"activities/odd.yaml", {}}};
    activities[1].text = text.toStdString();
    const Catalogue catalogue = load(items(), activities);
    QVERIFY2(catalogue.problems().size() == 1, qPrintable(shown(catalogue.problems())));
    const Problem &problem = catalogue.problems()[0];
    QCOMPARE(problem.file, std::string("activities/odd.yaml"));
    QVERIFY2(QString::fromStdString(problem.reason).contains(reason), problem.reason.c_str());
    QCOMPARE(problem.line, line);
    QVERIFY2(catalogue.activity({"pebble-post"}), "a broken file took a sound one down");
}

void TestCatalogueFiles::anyScriptIsRead_data()
{
    QTest::addColumn<uint>("letter");
    // RFC 3629 section 4: the first and last letters of each length of sequence.
    for (const uint letter :
         {0x80U + 0x20U, 0x7FFU, 0x800U, 0xFFFU, 0x1000U, 0xD7FFU, 0xE000U, 0xFFFDU, 0x10000U,
          0x3FFFFU, 0x40000U, 0xFFFFFU, 0x100000U, 0x10FFFFU})
        QTest::newRow(qPrintable(QString::number(letter, 16))) << letter;
}

void TestCatalogueFiles::anyScriptIsRead()
{
    QFETCH(uint, letter);
    // Qt encodes; the loader must give the same bytes back.
    const char32_t code = letter;
    const std::string name = "x" + QString::fromUcs4(&code, 1).toStdString() + "x";
    const Catalogue catalogue =
        loadActivity(replaced(soundActivity, "\"Small parts.\"", "\"" + name + "\""));
    QVERIFY2(catalogue.problems().empty(), qPrintable(shown(catalogue.problems())));
    QCOMPARE(catalogue.activities()[0].floorReason, name);
}

void TestCatalogueFiles::noTextWhateverThrows()
{
    std::mt19937_64 random(20270111);
    const std::string letters = "{}[]:,-\"'\n \t&*!|>#%@`ax09\xC3\xA9";
    for (int round = 0; round < 4000; ++round) {
        std::string text = soundActivity;
        for (std::uint64_t change = random() % 8 + 1; change > 0; --change) {
            const std::size_t at = random() % text.size();
            const char letter = letters[random() % letters.size()];
            if (random() % 3 == 0)
                text.erase(at, random() % 20);
            else if (random() % 2 == 0)
                text.insert(at, random() % 4 + 1, letter);
            else
                text[at] = letter;
        }
        const Catalogue catalogue = loadActivity(text);
        // A file is loaded or has its reason; nothing is lost in silence.
        QVERIFY(catalogue.activities().size() == 1 || !catalogue.problems().empty());
        QVERIFY(catalogue.activities().empty() || catalogue.problems().empty());
    }
}

QTEST_APPLESS_MAIN(TestCatalogueFiles)
#include "tst_catalogue_files.moc"
