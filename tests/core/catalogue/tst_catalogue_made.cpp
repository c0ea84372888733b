#include <QTest>

#include "catalogue_samples.h"

using namespace samples;

/// What the loader works out from measures, from pieces that are made and from words, and refuses:
/// activities.md 1.3 and 1.4; the rows of safety.md 1 are named beside each check.
class TestCatalogueMade : public QObject
{
    Q_OBJECT

private slots:
    void anItemThatSaysLessThanItsMeasuresIsRefused();
    void aTagMayBeAddedByHand();
    void measuresAreNeverLeftOut();
    void contradictoryMeasuresAreRefused_data();
    void contradictoryMeasuresAreRefused();
    void whatNeverGoesIntoABoxIsRefused();
    void aMadePieceBringsItsTag();
    void whatDividesMustSayWhatItMakes();
    void aSwapMustSayItsTags();
    void whatIsPointedIsForSittingDown();
    void aBalloonEntrySaysWhatBecomesOfIt();
    void whatHasNoPlaceInAnEntryIsRefused_data();
    void whatHasNoPlaceInAnEntryIsRefused();

private:
    static QString problemsOfItem(const std::string &text)
    {
        const std::vector<SourceFile> files{itemFile("cone", text)};
        return shown(load(files, {}).problems());
    }

    /// The sample with one file of its items changed.
    static QString problemsWith(const std::string &id, const std::string &text,
                                const std::string &activity)
    {
        std::vector<SourceFile> files = items();
        for (SourceFile &file : files) {
            if (file.name == "items/" + id + ".yaml")
                file.text = text;
        }
        const std::vector<SourceFile> activities{activityFile(activity)};
        return shown(load(files, activities).problems());
    }
};

void TestCatalogueMade::anItemThatSaysLessThanItsMeasuresIsRefused()
{
    const std::string sound = item("cone", "box", "SMALL");
    QCOMPARE(problemsOfItem(sound), QString());
    QCOMPARE(problemsOfItem(replaced(sound, "[SMALL]", "[]")),
             QString("items/cone.yaml:8: tags: SMALL is missing: it fits the small parts "
                     "cylinder\n"));
    const std::string cord =
        replaced(sound, "{whole: {shape: sphere, mm: [20]}}",
                 "{soft: \"A cord.\", cord: {length_mm: 300, thickness_mm: 3}}");
    QCOMPARE(problemsOfItem(cord), QString("items/cone.yaml:8: tags: CORD is missing: its cord is "
                                           "longer than 220 mm\n"));
}

void TestCatalogueMade::aTagMayBeAddedByHand()
{
    QCOMPARE(problemsOfItem(replaced(item("cone", "box", "SMALL"), "mm: [20]", "mm: [80]")),
             QString());
}

void TestCatalogueMade::measuresAreNeverLeftOut()
{
    const std::string sound = item("cone", "box", "SMALL");
    QVERIFY(problemsOfItem(replaced(sound, "measures: {whole: {shape: sphere, mm: [20]}}\n", ""))
                .contains("measures: is missing"));
    QVERIFY(problemsOfItem(replaced(sound, "holds: []\n", "")).contains("holds: is missing"));
    QVERIFY(problemsOfItem(replaced(sound, "{whole: {shape: sphere, mm: [20]}}", "{}"))
                .contains("measures.whole: give either"));
}

void TestCatalogueMade::contradictoryMeasuresAreRefused_data()
{
    QTest::addColumn<QString>("measures");
    QTest::addColumn<QString>("problem");
    const auto row = [](const char *name, const char *measures, const char *problem) {
        QTest::newRow(name) << measures << problem;
    };
    const char *sphere = "whole: {shape: sphere, mm: [20]}";
    const auto with = [&sphere](const char *more) { return QString("{%1, %2}").arg(sphere, more); };
    row("hard and soft", qPrintable(with("soft: \"It gives.\"")), "whole: give either");
    row("worn larger", qPrintable(with("least: {shape: sphere, mm: [30]}")),
        "least: is larger than the whole");
    row("a ball without a size", "{soft: \"Air.\", rolls_as: ball}",
        "rolls_as: a ball has a whole");
    row("a cord thicker than long", qPrintable(with("cord: {length_mm: 3, thickness_mm: 30}")),
        "cord.thickness_mm: is more than the length; are the two swapped?");
    row("a cord in metres", qPrintable(with("cord: {length_mm: 0.09, thickness_mm: 0.004}")),
        "cord.length_mm: are these millimetres?");
    row("an oval the wrong way round",
        qPrintable(with("hollow: {across_mm: 60, narrow_mm: 80, deep_mm: 20, stiff: true}")),
        "hollow.narrow_mm: is more than the width across; are the two swapped?");
    // PB-01, PB-02: thin film that covers a face, and drawstrings.
    row("a thin bag", qPrintable(with("film: {thickness_mm: 0.02, opening_mm: 500}")),
        "film.thickness_mm: a bag or sheet this large");
    row("a bag without a size", qPrintable(with("film: {thickness_mm: 0.05}")),
        "film.opening_mm: is missing");
    row("a part below zero", qPrintable(with("comes_off: [{part: nose, shape: sphere, mm: [-3]}]")),
        "comes_off[1].mm: each size is a number above zero");
}

void TestCatalogueMade::contradictoryMeasuresAreRefused()
{
    QFETCH(QString, measures);
    QFETCH(QString, problem);
    const std::string text = replaced(item("cone", "box", "SMALL, CORD"),
                                      "{whole: {shape: sphere, mm: [20]}}", measures.toStdString());
    const QString problems = problemsOfItem(text);
    QVERIFY2(problems.contains("measures." + problem), qPrintable(problems));
}

void TestCatalogueMade::whatNeverGoesIntoABoxIsRefused()
{
    // activities.md 1.4, last paragraph; safety.md MG-01, BB-01, EX-01, EO-01, MD-04, PB-02, FD-01.
    for (const char *thing : {"magnet", "battery", "swells in water", "essential oil", "glitter",
                              "hot glue", "cling film", "food"}) {
        const std::string text = replaced(item("cone", "box", "SMALL"), "holds: []",
                                          "holds: [" + std::string(thing) + "]");
        QCOMPARE(problemsOfItem(text),
                 QString("items/cone.yaml:11: holds: nothing with \"%1\" goes "
                         "into a box\n")
                     .arg(thing));
    }
}

void TestCatalogueMade::aMadePieceBringsItsTag()
{
    // activities.md 1.4, PAPER: "an entry that makes smaller ones (snips) carries SMALL".
    std::string text = replaced(soundActivity, "item: beads, qty", "item: blocks, qty");
    text =
        replaced(text, "  - {item: beads, with: blocks, cautions: [], text: \"Blocks instead.\"}\n",
                 "  []\n");
    text = replaced(text, "cautions: [SMALL]", "cautions: []");
    QCOMPARE(shown(loadActivity(text).problems()), QString());
    const auto making = [&text](const char *mm) {
        return loadActivity(replaced(text, "skills_main:",
                                     std::string("makes: [{piece: chips, of: blocks, shape: box, "
                                                 "mm: ") +
                                         mm + "}]\nskills_main:"));
    };
    QCOMPARE(shown(making("[90, 90, 1]").problems()), QString());
    QVERIFY(shown(making("[20, 10, 0.1]").problems())
                .contains("cautions: SMALL is missing: a piece it makes is a small part"));
    const auto ofMoon = replaced(text, "skills_main:",
                                 "makes: [{piece: chips, of: moon, shape: box, mm: [90, 90, 1]}]\n"
                                 "skills_main:");
    QVERIFY(shown(loadActivity(ofMoon).problems()).contains("makes[1].of: the entry does not use"));
}

void TestCatalogueMade::whatDividesMustSayWhatItMakes()
{
    const std::string sheet = item("tongs", "home", "") + "divides: true\n";
    const std::string uses = replaced(soundActivity, "{item: towel, qty", "{item: tongs, qty");
    QVERIFY(problemsWith("tongs", sheet, uses)
                .contains("makes: is missing: say what pieces are made of tongs, or [] for none"));
    QCOMPARE(
        problemsWith("tongs", sheet, replaced(uses, "skills_main:", "makes: []\nskills_main:")),
        QString());
}

void TestCatalogueMade::aSwapMustSayItsTags()
{
    const std::string blocks = item("blocks", "box", "ELASTIC");
    QCOMPARE(
        problemsWith("blocks", blocks, soundActivity),
        QString("activities/pebble-post.yaml:44: swaps[1].cautions: ELASTIC is missing: blocks "
                "carries it\n"));
    const std::string said =
        replaced(soundActivity, "with: blocks, cautions: []", "with: blocks, cautions: [ELASTIC]");
    QCOMPARE(problemsWith("blocks", blocks, said),
             QString("activities/pebble-post.yaml:44: swaps[1].age_floor_months: must be at least "
                     "60 for ELASTIC\n"));
    QCOMPARE(problemsWith("blocks", blocks,
                          replaced(said, "cautions: [ELASTIC]",
                                   "cautions: [ELASTIC], age_floor_months: 60")),
             QString());
}

void TestCatalogueMade::whatIsPointedIsForSittingDown()
{
    // PT-01: "seated use only, not walking or running with it in mouth or hand".
    const std::string tongs = item("tongs", "home", "") + "seated_only: true\n";
    const std::string uses = replaced(soundActivity, "{item: towel, qty", "{item: tongs, qty");
    QCOMPARE(problemsWith("tongs", tongs, uses), QString());
    QVERIFY(problemsWith("tongs", tongs, replaced(uses, "[chair, wheelchair]", "[chair, standing]"))
                .contains("position: standing is not for tongs"));
}

void TestCatalogueMade::aBalloonEntrySaysWhatBecomesOfIt()
{
    // BL-03: "the closing step asks 'balloon deflated, cut up and binned ...?'".
    std::string text = replaced(soundActivity, "cautions: [SMALL]", "cautions: [SMALL, BALLOON]");
    text = replaced(text, "age_floor_months: 36", "age_floor_months: 60");
    QVERIFY(shown(loadActivity(text).problems()).contains("must say what becomes of the balloon"));
    text = replaced(text, "\"Six beads: count together\"", "\"Balloon cut up and in the bin\"");
    QCOMPARE(shown(loadActivity(text).problems()), QString());
}

void TestCatalogueMade::whatHasNoPlaceInAnEntryIsRefused_data()
{
    QTest::addColumn<QString>("words");
    QTest::addColumn<bool>("refused");
    QTest::newRow("EL-02") << "Stretch it back and launch it." << true;
    QTest::newRow("CO-04, a cot") << "Tie the cord across the cot." << true;
    QTest::newRow("CO-04, prams") << "Tie it between two prams." << true;
    QTest::newRow("BL-05") << "Fill the balloon with helium." << true;
    QTest::newRow("MG-01") << "Magnets hide in the dough." << true;
    QTest::newRow("FD-01") << "Cut a grape in two." << true;
    QTest::newRow("BT-01") << "Put the battery into the boat." << true;
    QTest::newRow("a button battery all the same") << "Hide a button battery." << true;
    QTest::newRow("a warning against one") << "Each is money, not a button battery." << false;
    QTest::newRow("a word inside another") << "A scotch cotton apricot pampered the scot." << false;
}

void TestCatalogueMade::whatHasNoPlaceInAnEntryIsRefused()
{
    QFETCH(QString, words);
    QFETCH(bool, refused);
    const std::string text = replaced(soundActivity, "Post six beads.", words.toStdString());
    QCOMPARE(shown(loadActivity(text).problems()).contains("has no place in an entry"), refused);
}

QTEST_APPLESS_MAIN(TestCatalogueMade)
#include "tst_catalogue_made.moc"
