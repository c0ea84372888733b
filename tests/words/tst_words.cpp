#include <QtTest>

#include "tests/words/screen_keys.h"
#include "tests/words/translation_rules.h"
#include "tests/words/written_calls.h"

#include <QDirIterator>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTranslator>

#include <algorithm>

using namespace lidlark::words;

namespace {

const SourceKey greeting{QStringLiteral("Door"), QStringLiteral("Come in, %1"), false};
const SourceKey pieces{QStringLiteral("core"), QStringLiteral("%1 pieces"), true};
const std::vector<SourceKey> twoKeys{greeting, pieces};

QString root()
{
    return qEnvironmentVariable("LIDLARK_SOURCE_DIR");
}

/// All there is to say: found once, since lupdate reads every screen.
const FoundKeys &everyKey()
{
    static const FoundKeys keys = allKeysOf(root());
    return keys;
}

bool isSaid(const char *context, const char *source, bool counted = false)
{
    const SourceKey wanted{QString::fromUtf8(context), QString::fromUtf8(source), counted};
    return std::ranges::find(everyKey().keys, wanted) != everyKey().keys.end();
}

QStringList sameInEnglish()
{
    QFile file(root() + QStringLiteral("/tests/words/same_in_english.txt"));
    const bool open = file.open(QIODevice::ReadOnly);
    QStringList lines = open ? QString::fromUtf8(file.readAll()).split(u'\n') : QStringList();
    lines.removeIf([](const QString &line) { return line.isEmpty() || line.startsWith(u'#'); });
    return lines;
}

TranslationFile polish(const QStringList &greetingForms, const QStringList &pieceForms)
{
    TranslationFile file;
    file.language = QStringLiteral("pl");
    file.messages = {{greeting, greetingForms, false}, {pieces, pieceForms, false}};
    return file;
}

const TranslationFile &goodPolish()
{
    static const TranslationFile file = polish(
        {QStringLiteral("Wejdź, %1")},
        {QStringLiteral("%1 sztuka"), QStringLiteral("%1 sztuki"), QStringLiteral("%1 sztuk")});
    return file;
}

/// Everything wrong with @p file, in one line.
QString wrongWith(const TranslationFile &file)
{
    return problemsWith(file, twoKeys, {}).join(QStringLiteral("; "));
}

} // namespace

/// Guards that each language of the app says all that the screens can say.
class TestWords : public QObject
{
    Q_OBJECT

private slots:
    void theWordsOfTheCoreAreFoundInItsSources()
    {
        const QString source =
            QStringLiteral("// say(\"not this\")\n"
                           "return {say(\"One \\\"%1\\\" is \"\n"
                           "            \"missing.\"), {one}};\n"
                           "return {sayCounted(\"%1 weeks\\u2014or more\"), {}};");
        const auto found = coreKeysIn(QStringLiteral("a.cpp"), source);
        QCOMPARE(found.problems, QStringList());
        QCOMPARE(found.keys.size(), std::size_t{2});
        QCOMPARE(found.keys[0].source, QStringLiteral("One \"%1\" is missing."));
        QVERIFY(!found.keys[0].counted);
        QCOMPARE(found.keys[1].source, QStringLiteral("%1 weeks\u2014or more"));
        QVERIFY(found.keys[1].counted);
        const auto other = coreKeysIn(QStringLiteral("b.cpp"), QStringLiteral("say(word)"));
        QCOMPARE(other.problems.size(), 1);
    }

    void nothingThatIsSaidIsLost()
    {
        QCOMPARE(everyKey().problems, QStringList());
        QVERIFY(isSaid("core", "First look at each child's hands and mouth."));
        QVERIFY(isSaid("core", "%1 small pieces are missing.", true));
        QVERIFY(isSaid("SafetyWords", "Pick up every piece now."));
        QVERIFY(isSaid("ItemWords", "%n still in use.", true));
        QSet<QString> sources;
        for (const SourceKey &key : everyKey().keys)
            sources.insert(key.source);
        const QStringList written = writtenCallsIn(root());
        QVERIFY(written.size() > 300);
        for (const QString &text : written)
            QVERIFY2(sources.contains(text), qPrintable(text));
    }

    void everyLanguageSaysItAll()
    {
        const QDir folder(root() + QStringLiteral("/assets/translations"));
        const QStringList names = folder.entryList({QStringLiteral("lidlark_*.ts")}, QDir::Files);
        QVERIFY(names.contains(QStringLiteral("lidlark_en.ts")));
        QStringList problems;
        for (const QString &name : names) {
            if (name == QLatin1String("lidlark_en.ts"))
                continue;
            const TranslationFile file = readTranslations(folder.filePath(name));
            const QStringList its = problemsWith(file, everyKey().keys, sameInEnglish());
            for (const QString &problem : its)
                problems.append(name + QStringLiteral(": ") + problem);
        }
        QVERIFY2(problems.isEmpty(), qPrintable(problems.join(u'\n')));
    }

    /// No points, streaks, badges, clocks that shame or locked things (job.md C2): their words
    /// stand in no sentence of a screen or of the core, and in no play (where stars may shine).
    void nothingIsToBeWonOrLost()
    {
        const QString prizes = QStringLiteral(
            "streaks?|badges?|prizes?|rewards?|scores?|wins?|winners?|winning|losers?|unlock(s|ed)?"
            "|"
            "bonus(es)?|troph(y|ies)|medals?|hurry|leader ?boards?|rank(s|ing)?");
        const QRegularExpression onScreen(
            QStringLiteral("\\b(points?|levels?|stars?|count ?downs?|%1)\\b").arg(prizes),
            QRegularExpression::CaseInsensitiveOption);
        const QRegularExpression inPlay(QStringLiteral("\\b(%1)\\b").arg(prizes),
                                        QRegularExpression::CaseInsensitiveOption);
        QVERIFY(QStringLiteral("You win a star!").contains(inPlay));
        for (const SourceKey &key : everyKey().keys)
            QVERIFY2(!key.source.contains(onScreen), qPrintable(key.source));
        QDirIterator files(root() + QStringLiteral("/assets/catalogue/activities"),
                           {QStringLiteral("*.yaml")}, QDir::Files);
        int plays = 0;
        for (; files.hasNext(); ++plays) {
            QFile file(files.next());
            QVERIFY(file.open(QIODevice::ReadOnly));
            const auto found = inPlay.match(QString::fromUtf8(file.readAll()));
            QVERIFY2(!found.hasMatch(),
                     qPrintable(file.fileName() + QStringLiteral(": ") + found.captured()));
        }
        QCOMPARE(plays, 80);
    }

    /// English has the sentences of a screen that count: "1 minute", "2 minutes".
    void englishHasOneAndMany()
    {
        const TranslationFile english =
            readTranslations(root() + QStringLiteral("/assets/translations/lidlark_en.ts"));
        std::vector<SourceKey> counted;
        for (const SourceKey &key : everyKey().keys) {
            if (key.counted && key.context != QLatin1String("core"))
                counted.push_back(key);
        }
        QStringList same;
        for (const SourceKey &key : counted)
            same.append(key.source);
        QCOMPARE(problemsWith(english, counted, same), QStringList());
    }

    void aWholeFileIsGood() { QCOMPARE(wrongWith(goodPolish()), QString()); }

    void everyFaultIsNamed()
    {
        TranslationFile file = goodPolish();
        file.messages.pop_back();
        QCOMPARE(wrongWith(file), QStringLiteral("core: \"%1 pieces\": missing"));
        file = goodPolish();
        file.messages.push_back(file.messages.front());
        QCOMPARE(wrongWith(file), QStringLiteral("Door: \"Come in, %1\": twice"));
        file = goodPolish();
        file.messages.push_back({{QStringLiteral("Door"), QStringLiteral("Out"), false},
                                 {QStringLiteral("Wyjdź")},
                                 false});
        QCOMPARE(wrongWith(file), QStringLiteral("Door: \"Out\": nothing says it any more"));
        file = goodPolish();
        file.messages.front().forms = {QString()};
        QCOMPARE(wrongWith(file), QStringLiteral("Door: \"Come in, %1\": no words"));
        file.messages.front().unfinished = true;
        QCOMPARE(wrongWith(file), QString());
        file = goodPolish();
        file.messages.back().key.counted = false;
        QVERIFY(wrongWith(file).contains(QStringLiteral("numerus is wrong")));
        file = goodPolish();
        file.messages.back().forms.removeLast();
        QCOMPARE(wrongWith(file), QStringLiteral("core: \"%1 pieces\": 2 forms"));
        file = goodPolish();
        file.messages.front().forms = {QStringLiteral("Wejdź, %2")};
        QCOMPARE(wrongWith(file), QStringLiteral("Door: \"Come in, %1\": other places: Wejdź, %2"));
        file.messages.front().forms = {greeting.source};
        QCOMPARE(wrongWith(file), QStringLiteral("Door: \"Come in, %1\": still English"));
        QCOMPARE(problemsWith(file, twoKeys, {greeting.source}), QStringList());
    }

    /// The Unicode Bidirectional Algorithm (UAX #9, rule P2): a line's direction is its first
    /// strong letter's, and a name may begin with a Latin one.
    void aLineThatBeginsWithANameSaysItsDirection()
    {
        TranslationFile file = goodPolish();
        file.language = QStringLiteral("ur");
        file.messages.back().forms = {QStringLiteral("\u200F%1 ٹکڑا"), QStringLiteral("(%1) ٹکڑے")};
        QCOMPARE(wrongWith(file),
                 QStringLiteral("core: \"%1 pieces\": begins with a place and without U+200F: "
                                "(%1) ٹکڑے"));
        file.messages.front().forms = {QStringLiteral("Lidlark میں، %1")};
        QVERIFY(wrongWith(file).contains(QStringLiteral("U+200F: Lidlark میں")));
        file.messages.front().forms = {QStringLiteral("\u200FLidlark میں، %1")};
        file.messages.back().forms.back() = QStringLiteral("ٹکڑے %1");
        QCOMPARE(wrongWith(file), QString());
    }

    void aFileIsBroughtUpToDate()
    {
        TranslationFile file = goodPolish();
        file.messages.front().key.source = QStringLiteral("Said no more");
        const TranslationFile fresh = broughtUpToDate(file, twoKeys);
        QCOMPARE(wrongWith(fresh), QString());
        QVERIFY(fresh.messages.front().unfinished);
        QCOMPARE(fresh.messages.front().forms, QStringList{QString()});
        QCOMPARE(fresh.messages.back().forms, goodPolish().messages.back().forms);
    }

    /// Qt's own lrelease and QTranslator read what was written here.
    void whatIsWrittenIsReadByQt()
    {
        const QTemporaryDir folder;
        const QString source = folder.filePath(QStringLiteral("lidlark_pl.ts"));
        const QString compiled = folder.filePath(QStringLiteral("lidlark_pl.qm"));
        QVERIFY(writeTranslations(source, goodPolish()));
        QCOMPARE(wrongWith(readTranslations(source)), QString());
        QCOMPARE(
            QProcess::execute(QStringLiteral(LIDLARK_LRELEASE),
                              {QStringLiteral("-silent"), source, QStringLiteral("-qm"), compiled}),
            0);
        QTranslator translator;
        QVERIFY(translator.load(compiled));
        QCOMPARE(translator.translate("Door", "Come in, %1"), QStringLiteral("Wejdź, %1"));
        QCOMPARE(translator.translate("core", "%1 pieces", nullptr, 1),
                 QStringLiteral("%1 sztuka"));
        QCOMPARE(translator.translate("core", "%1 pieces", nullptr, 3),
                 QStringLiteral("%1 sztuki"));
        QCOMPARE(translator.translate("core", "%1 pieces", nullptr, 5), QStringLiteral("%1 sztuk"));
    }
};

QTEST_GUILESS_MAIN(TestWords)
#include "tst_words.moc"
