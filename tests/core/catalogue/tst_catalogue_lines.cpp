#include <QTest>

#include "core/catalogue/lint.h"
#include "shipped_catalogue.h"

#include <QSet>

using namespace lidlark;
using namespace lidlark::catalogue;

// The words of the catalogue we ship: every rule of the authoring checklist that a program can see
// (activities.md section 6), and that no two entries say the same.

namespace {

QString written(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

struct Line {
    QString kind; ///< step, grading or say.
    QString entry;
    QStringList words; ///< Lower case, without punctuation.
};

QStringList bareWords(const std::string &text)
{
    QString bare;
    for (const QChar letter : QString::fromStdString(text).toLower()) {
        if (letter.isLetterOrNumber() || letter.isSpace())
            bare += letter;
    }
    return bare.simplified().split(' ');
}

std::vector<Line> linesOf(const Activity &activity)
{
    const QString id = QString::fromStdString(activity.id.value);
    std::vector<Line> lines;
    lines.reserve(activity.steps.size());
    for (const Step &step : activity.steps)
        lines.push_back({"step", id, bareWords(step.text)});
    for (const auto *gradings : {&activity.easier, &activity.harder}) {
        for (const Grading &grading : *gradings)
            lines.push_back({"grading", id, bareWords(grading.text)});
    }
    for (const std::string &line : activity.say)
        lines.push_back({"say", id, bareWords(line)});
    return lines;
}

QSet<QString> runsOf(const QStringList &words)
{
    QSet<QString> runs;
    for (qsizetype i = 0; i + 2 < words.size(); ++i)
        runs.insert(words.mid(i, 3).join(' '));
    return runs;
}

QString shown(const std::vector<LintFinding> &findings, const Activity &activity)
{
    QString text;
    for (const LintFinding &finding : findings)
        text += QString::fromStdString(activity.id.value + " " + finding.field + ": " +
                                       finding.problem + "\n");
    return text;
}

/// Tags of things as activities.md 1.3 gives them, copied by hand; `towel` apart.
const std::map<QString, QString> &tagsOfThings()
{
    static const std::map<QString, QString> tags{{"card", ""},
                                                 {"lace", "CORD"},
                                                 {"pieces", "SMALL"},
                                                 {"bands", "ELASTIC LATEX"},
                                                 {"loops", "ELASTIC"},
                                                 {"pegs", "PINCH SMALL"},
                                                 {"onepegs", "PINCH"},
                                                 {"scissors", "SHARP"},
                                                 {"crayons", "SMALL"},
                                                 {"chunky", ""},
                                                 {"dough", "DOUGH WHEAT PET HYG"},
                                                 {"ricedough", "DOUGH PET HYG"},
                                                 {"eyes", "SMALL"},
                                                 {"ball", "LATEX"},
                                                 {"pouch", ""},
                                                 {"pompoms", "SMALL"},
                                                 {"balloon", "BALLOON LATEX"},
                                                 {"scarf", "FACE"},
                                                 {"dropper", "WATER"},
                                                 {"straw", "STRAW HYG"},
                                                 {"rband", "BAND"},
                                                 {"coins", "COIN SMALL"},
                                                 {"paper", "PAPER"},
                                                 {"stickers", "STICKER"},
                                                 {"fork", "FORK"},
                                                 {"foil", "FOIL"},
                                                 {"foam", "FOAM SCENT"},
                                                 {"tin", "EDGE TRACE"},
                                                 {"jars", "TRACE"},
                                                 {"water", "WATER"}};
    return tags;
}

QString leftOut(const ItemId &item, TagSet cautions)
{
    const auto tags = tagsOfThings().find(QString::fromStdString(item.value));
    QString missing;
    if (tags == tagsOfThings().end() || tags->second.isEmpty())
        return missing;
    QSet<QString> there;
    for (const Tag tag : cautions.list())
        there.insert(written(tagNames.of(tag)));
    for (const QString &tag : tags->second.split(' ')) {
        if (!there.contains(tag))
            missing += " " + QString::fromStdString(item.value) + ": " + tag;
    }
    return missing;
}

} // namespace

class TestCatalogueLines : public QObject
{
    Q_OBJECT

private slots:
    void noEntryHasFindings();
    void everyStepHasADrawingOfItsOwn();
    void everyEntryCanBeReadAtTheAgeOfEleven();
    void noTwoEntriesShareALine();
    void noTwoEntriesReadAlike();
    void cautionsLeaveOutNoTagOfAThing();

private:
    std::vector<Line> allLines() const;

    const Catalogue m_catalogue = shipped::catalogue();
};

std::vector<Line> TestCatalogueLines::allLines() const
{
    std::vector<Line> all;
    for (const Activity &activity : m_catalogue.activities()) {
        const std::vector<Line> lines = linesOf(activity);
        all.insert(all.end(), lines.begin(), lines.end());
    }
    return all;
}

/// Drawings apart: they have a test of their own below.
void TestCatalogueLines::noEntryHasFindings()
{
    QVERIFY(!m_catalogue.activities().empty());
    QString all;
    for (const Activity &activity : m_catalogue.activities()) {
        std::vector<LintFinding> findings = lint(activity, m_catalogue);
        std::erase_if(findings, [](const auto &one) { return one.rule == LintRule::Drawings; });
        all += shown(findings, activity);
    }
    QVERIFY2(all.isEmpty(), qPrintable(all));
}

/// The main picture shows one step; each of the others has its own drawing.
void TestCatalogueLines::everyStepHasADrawingOfItsOwn()
{
    QString all;
    for (const Activity &activity : m_catalogue.activities()) {
        std::vector<LintFinding> findings = lint(activity, m_catalogue);
        std::erase_if(findings, [](const auto &one) { return one.rule != LintRule::Drawings; });
        all += shown(findings, activity);
    }
    QVERIFY2(all.isEmpty(), qPrintable(all));
}

/// Source of the age: activities.md 1.1 and E4. The formula is tested in tst_readability.
void TestCatalogueLines::everyEntryCanBeReadAtTheAgeOfEleven()
{
    for (const Activity &activity : m_catalogue.activities()) {
        const double grade = readingGradeOf(activity);
        QVERIFY2(grade > 0 && grade < 6,
                 qPrintable(QString("%1: %2").arg(activity.id.value.c_str()).arg(grade)));
    }
}

void TestCatalogueLines::noTwoEntriesShareALine()
{
    std::map<QString, QString> seen;
    QString shared;
    for (const Line &line : allLines()) {
        const auto [first, isNew] = seen.emplace(line.words.join(' '), line.entry);
        if (!isNew)
            shared += first->second + " and " + line.entry + ": " + first->first + "\n";
    }
    QVERIFY2(shared.isEmpty(), qPrintable(shared));
}

/// Alike: more than 70 % of the shorter line's runs of three words.
void TestCatalogueLines::noTwoEntriesReadAlike()
{
    struct Runs {
        Line line;
        QSet<QString> runs;
    };
    std::vector<Runs> before;
    QString alike;
    for (const Line &line : allLines()) {
        const QSet<QString> runs = runsOf(line.words);
        for (const Runs &other : before) {
            if (other.line.kind != line.kind || other.line.entry == line.entry)
                continue;
            const qsizetype fewer = std::min(runs.size(), other.runs.size());
            if (fewer >= 3 && 10 * (runs & other.runs).size() > 7 * fewer)
                alike +=
                    other.line.entry + " and " + line.entry + ": " + line.words.join(' ') + "\n";
        }
        before.push_back({line, runs});
    }
    QVERIFY2(alike.isEmpty(), qPrintable(alike));
}

void TestCatalogueLines::cautionsLeaveOutNoTagOfAThing()
{
    QString missing;
    for (const Activity &activity : m_catalogue.activities()) {
        const QString id = QString::fromStdString(activity.id.value);
        for (const ItemUse &use : activity.items) {
            if (const QString tags = leftOut(use.item, activity.cautions); !tags.isEmpty())
                missing += id + tags + "\n";
        }
        for (const ActivitySwap &swap : activity.swaps) {
            if (const QString tags = leftOut(swap.with, swap.cautions); !tags.isEmpty())
                missing += id + tags + "\n";
        }
    }
    QVERIFY2(missing.isEmpty(), qPrintable(missing));
}

QTEST_APPLESS_MAIN(TestCatalogueLines)
#include "tst_catalogue_lines.moc"
