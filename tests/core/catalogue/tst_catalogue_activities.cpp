#include <QTest>

#include "catalogue_samples.h"

using namespace samples;

// Mistakes in one activity file: activities.md 1.1 (fields), 1.3 (cautions), 1.4 (floors).

class TestCatalogueActivities : public QObject
{
    Q_OBJECT

private slots:
    void aMistakeInAnActivityIsNamed_data();
    void aMistakeInAnActivityIsNamed();
    void anySeatWillDo_data();
    void anySeatWillDo();
    void whatIsMissingIsNamedAtItsRecord_data();
    void whatIsMissingIsNamedAtItsRecord();
};

void TestCatalogueActivities::aMistakeInAnActivityIsNamed_data()
{
    QTest::addColumn<QString>("what");
    QTest::addColumn<QString>("with"); ///< The finding stands on the line where this begins.
    QTest::addColumn<QString>("field");
    QTest::addColumn<QString>("reason");
    const auto row = [](const char *name, const QString &what, const QString &with,
                        const char *field, const char *reason) {
        QTest::newRow(name) << what << with << field << reason;
    };

    // activities.md 1.1: names, types and words.
    row("unknown key", "mess: 0", "mood: 0\nmess: 0", "mood", "is not a field known here");
    row("unknown key inside", "{out: 1,", "{rest: 1, out: 1,", "minutes.rest", "not a field");
    row("key written twice", "mess: 0", "mess: 0\nmess: 1", "mess", "written twice");
    row("text where a number belongs", "mess: 0", "mess: wet", "mess", "must be a whole number");
    row("a quoted number", "mess: 0", "mess: \"0\"", "mess", "must be a whole number");
    row("half a number", "mess: 0", "mess: 0.5", "mess", "must be a whole number");
    row("a number too large to hold", "mess: 0", "mess: 99999999999999", "mess", "whole number");
    row("mess out of bounds", "mess: 0", "mess: 3", "mess", "must be 0 to 2");
    row("yes is not true", "no_box: false", "no_box: no", "no_box", "must be true or false");
    row("quoted truth", "no_box: false", "no_box: \"false\"", "no_box", "must be true or false");
    row("unknown word", "space: table", "space: garden", "space", "\"garden\" is not one of");
    row("unknown tag", "[SMALL]", "[SMALL, TINY]", "cautions[2]", "\"TINY\" is not one of");
    row("unknown skill", "[PIN]", "[PIM]", "skills_main[1]", "\"PIM\" is not one of");
    row("unknown life area", "[opening things]", "[opening]", "life_areas[1]", "is not one of");
    row("unknown lever", "easier: [{lever: size", "easier: [{lever: luck", "easier[1].lever",
        "\"luck\" is not one of");
    row("a word twice", "[FOR, STR]", "[FOR, FOR]", "skills_also[2]", "written twice");
    row("a list where text belongs", "name: Pebble Post", "name: [Pebble]", "name", "must be text");
    row("text where a list belongs", "senses: [tactile]", "senses: tactile", "senses",
        "must be a list");
    row("text where a group belongs", "minutes: {out: 1, play: 5, back: 1}", "minutes: 7",
        "minutes", "must be a group of named fields");
    row("text where a line of groups belongs", "[{lever: size, text: \"Larger pot\"}]", "[Larger]",
        "easier[1]", "must be a group of named fields");
    row("blank text", "\"Small parts.\"", "\"  \"", "floor_reason", "must not be empty");
    row("no value", "claim: customary", "claim:", "claim", "is not one of");
    row("status unknown", "awaiting-review", "done", "status", "is not one of");

    // activities.md 1.1: counts and limits.
    row("invite of 13 words", "Will the pebble fit?", words(13), "invite",
        "must have at most 12 words, not 13");
    row("invite of 13 words beyond ASCII", "Will the pebble fit?",
        QString::fromUtf8("é ").repeated(13).trimmed(), "invite", "at most 12 words, not 13");
    row("adult line of 26 words", "Sit beside the child with the beads in one pot.", words(26),
        "adult_line", "must have at most 25 words, not 26");
    row("no life area too many", "[opening things]",
        "[dressing, settling, getting ready, "
        "opening things]",
        "life_areas", "must have 0 to 3 lines, not 4");
    row("three main skills", "[PIN]", "[PIN, TRI, BIL]", "skills_main", "must have 1 to 2 lines");
    row("no main skill", "[PIN]", "[]", "skills_main", "must have 1 to 2 lines, not 0");
    row("three other skills", "[FOR, STR]", "[FOR, STR, TAC]", "skills_also",
        "must have 0 to 2 lines");
    row("a skill main and other", "[FOR, STR]", "[STR, PIN]", "skills_also",
        "is a main skill already");
    row("play too short", "play: 5", "play: 2", "minutes.play", "must be 3 to 8");
    row("play too long", "play: 5", "play: 9", "minutes.play", "must be 3 to 8");
    row("getting out too long", "out: 1", "out: 3", "minutes.out", "must be 0 to 2");
    row("putting back too long", "back: 1}", "back: 3}", "minutes.back", "must be 0 to 2");
    row("hands", "hands: 1", "hands: 3", "hands", "must be 0 to 2");
    row("no easier way", "[{lever: size, text: \"Larger pot\"}]", "[]", "easier",
        "must have 1 to 3 lines, not 0");
    row("three signs to watch for", "[\"A bead on the floor.\"]", "[a, b, c]", "watch_for",
        "must have 1 to 2 lines");
    row("a step's drawing without words", "drawing: scene-pebble-post-2, alt: \"A bead falls.\"",
        "drawing: scene-pebble-post-2", "steps[2].alt", "is missing");

    // activities.md 1.1: access, claim, put-back, no box.
    row("one hand is implied, not written", "{one_hand: \"The pot stands on the towel.\"}",
        "{seated: \"At the table.\"}", "ways_in.one_hand", "must be written");
    row("low energy without a seat", "[chair, wheelchair]", "[standing, side-lying]", "position",
        "needs a seated way");
    row("a mouth entry claims more than play", "[FOR, STR]", "[ORL]", "claim", "must be play");
    row("the lid stays off", "\"Lid on\"", "\"Beads away\"", "put_back",
        "the last line must be \"Lid on\"");
    row("no box, yet from the box", "no_box: false", "no_box: true", "items[1].source",
        "uses no box item");

    // activities.md 1.1: items.
    row("an item nobody knows", "item: beads, qty", "item: buttons, qty", "items[1].item",
        "there is no sound item \"buttons\"");
    row("an item from elsewhere", "qty: 6, source: box", "qty: 6, source: home", "items[1].source",
        "must be \"box\" for beads");
    row("more than a box holds", "qty: 6", "qty: 7", "items[1].qty", "a standard box holds 6");
    row("a box item without its count", ", count_back: 6", "", "items[1].count_back", "is missing");
    row("used up and counted back", "fate: comes-back, count_back", "fate: used-up, count_back",
        "items[1].count_back", "must be left out");
    row("more back than out", "count_back: 6", "count_back: 7", "items[1].count_back",
        "must be at most the quantity");
    row("an item twice", "{item: towel, qty: 1, source: home, role: nice, fate: comes-back}",
        "{item: beads, qty: 1, source: box, role: nice, fate: comes-back, count_back: 1}",
        "items[2].item", "is listed twice");

    // activities.md 1.3: cautions are at least the tags of the items.
    row("a tag of an item left out", "cautions: [SMALL]", "cautions: [TRIP]", "cautions",
        "SMALL is missing: beads carries it");
    row("latex left out", "{item: towel, qty: 1, source: home, role: nice, fate: comes-back}",
        "{item: bladder, qty: 1, source: box, role: nice, fate: comes-back, count_back: 1}",
        "cautions", "LATEX is missing: bladder carries it");

    // Swaps point at existing items and at an item the entry uses.
    row("a swap nobody knows", "with: blocks", "with: bricks", "swaps[1].with",
        "there is no sound item \"bricks\"");
    row("a swap for nothing", "{item: beads, with: blocks", "{item: tongs, with: blocks",
        "swaps[1].item", "does not use \"tongs\"");
    row("a swap for itself", "with: blocks", "with: beads", "swaps[1].with", "for itself");
    row("a swap without words", "text: \"Blocks instead.\"", "text: \"\"", "swaps[1].text",
        "must not be empty");

    row("an id with capitals", "id: pebble-post", "id: Pebble-Post", "id", "must be lower-case");
    row("an id of another file", "id: pebble-post", "id: pebble-pot", "id",
        "must be the file's name, \"pebble-post\"");
}

void TestCatalogueActivities::aMistakeInAnActivityIsNamed()
{
    QFETCH(QString, what);
    QFETCH(QString, with);
    QFETCH(QString, field);
    QFETCH(QString, reason);
    const std::string text = replaced(soundActivity, what.toStdString(), with.toStdString());
    QVERIFY2(!text.empty(), "the text to replace is not in the sample");
    const Catalogue catalogue = loadActivity(text);
    QVERIFY(catalogue.activities().empty());
    const auto found = std::find_if(
        catalogue.problems().begin(), catalogue.problems().end(), [&](const Problem &problem) {
            return problem.field == field.toStdString() &&
                   QString::fromStdString(problem.reason).contains(reason);
        });
    QVERIFY2(found != catalogue.problems().end(), qPrintable(shown(catalogue.problems())));
    QCOMPARE(found->file, std::string("activities/pebble-post.yaml"));
    // A finding about one field against another stands where the field that must change stands.
    const std::size_t changed =
        text.find(field == "items[1].source" ? "{item: beads" : with.toStdString());
    const std::size_t own = text.find(QString("\n%1:").arg(field).toStdString()) + 1;
    const std::size_t at = field == "claim" || field == "cautions" ? own : changed;
    if (!with.isEmpty())
        QCOMPARE(found->line, lineAt(text, at) + (field == "mess" && with.contains("\n") ? 1 : 0));
    QCOMPARE(QString::fromStdString(found->text()),
             QString("activities/pebble-post.yaml:%1: %2: %3")
                 .arg(found->line)
                 .arg(field, QString::fromStdString(found->reason)));
}

void TestCatalogueActivities::anySeatWillDo_data()
{
    QTest::addColumn<QString>("position");
    QTest::addColumn<QString>("energy");
    QTest::addColumn<bool>("sound");
    // activities.md 1.1, position: "at least one seated way for every low and medium entry".
    for (const char *seat : {"lap", "chair", "wheelchair", "floor"})
        QTest::newRow(seat) << seat << "low" << true;
    QTest::newRow("standing, low") << "standing"
                                   << "low" << false;
    QTest::newRow("lying on the side, medium") << "side-lying"
                                               << "medium" << false;
    QTest::newRow("standing, high") << "standing"
                                    << "high" << true;
}

void TestCatalogueActivities::anySeatWillDo()
{
    QFETCH(QString, position);
    QFETCH(QString, energy);
    std::string text = replaced(soundActivity, "chair, wheelchair", position.toStdString());
    text = replaced(text, "energy: low", "energy: " + energy.toStdString());
    QTEST(loadActivity(text).problems().empty(), "sound");
}

void TestCatalogueActivities::whatIsMissingIsNamedAtItsRecord_data()
{
    QTest::addColumn<QString>("field");
    // Every field of activities.md 1.1 that an entry must have.
    for (const char *field :
         {"id",           "entry",       "version",     "status",     "name",
          "invite",       "adult_line",  "picture",     "steps",      "minutes",
          "items",        "skills_main", "skills_also", "life_areas", "age_floor_months",
          "floor_reason", "effect",      "senses",      "mess",       "space",
          "sound",        "supervision", "hands",       "energy",     "position",
          "words_needed", "easier",      "harder",      "ways_in",    "cautions",
          "watch_for",    "stop_when",   "say",         "put_back",   "no_box",
          "video_ok",     "view",        "claim"})
        QTest::newRow(field) << field;
}

void TestCatalogueActivities::whatIsMissingIsNamedAtItsRecord()
{
    QFETCH(QString, field);
    // The field's name is changed, so that its value is still read past.
    const std::string name = field.toStdString();
    const std::string text = replaced("\n" + soundActivity, "\n" + name + ":", "\nx-" + name + ":");
    QVERIFY(!text.empty());
    const Catalogue catalogue = loadActivity(text);
    QVERIFY(catalogue.activities().empty());
    const auto found = std::find(
        catalogue.problems().begin(), catalogue.problems().end(),
        Problem{"activities/pebble-post.yaml", 2, name, "is missing"}); // The record begins at 2.
    QVERIFY2(found != catalogue.problems().end(), qPrintable(shown(catalogue.problems())));
}

QTEST_APPLESS_MAIN(TestCatalogueActivities)
#include "tst_catalogue_activities.moc"
