#include <QTest>

#include "core/catalogue/catalogue.h"

#include <algorithm>
#include <random>

using namespace lidlark;
using namespace lidlark::catalogue;

// What the loader must refuse is written in activities.md 1.1 (fields), 1.3 (cautions of the items)
// and 1.4 (floors of the tags); each row names its rule. The texts are invented for this test.

namespace {

std::string item(const std::string &id, const std::string &source, const std::string &tags,
                 const std::string &more = {})
{
    std::string text = "id: ";
    text += id + "\nversion: 1\nname: " + id + "\none: " + id + "\nsource: " + source;
    text += source == "box" ? "\nlid_count: 6" : "\nlid_count: 0";
    text += "\ncomes_back: \"yes\"\ntags: [" + tags + "]\nallergens: [";
    text += tags.find("LATEX") != std::string::npos ? "latex" : "";
    text += "]\ncare: [\"Wipe.\"]\ndrawing: item-" + id + "\nalt: \"A thing.\"\n" + more;
    return text;
}

SourceFile itemFile(const std::string &id, const std::string &text)
{
    return {"items/" + id + ".yaml", text};
}

std::vector<SourceFile> soundItems()
{
    return {itemFile("beads", item("beads", "box", "SMALL", "swap: {with: blocks, note: Large}\n")),
            itemFile("blocks", item("blocks", "box", "")),
            itemFile("bladder", item("bladder", "box", "LATEX")),
            itemFile("tongs", item("tongs", "home", "")),
            itemFile("towel", item("towel", "home", "FACE"))};
}

const std::string soundActivity = R"(id: pebble-post
entry: A99
version: 1
status: awaiting-review
name: Pebble Post
invite: "Will the pebble fit?"
adult_line: "Sit beside the child with the beads in one pot."
picture: {drawing: scene-pebble-post, alt: "A hand over a pot."}
steps:
  - text: "Put the pot 20 cm from the child."
  - {text: "Post six beads.", drawing: scene-pebble-post-2, alt: "A bead falls."}
minutes: {out: 1, play: 5, back: 1}
items:
  - {item: beads, qty: 6, source: box, role: must, fate: comes-back, count_back: 6}
  - {item: towel, qty: 1, source: home, role: nice, fate: comes-back}
skills_main: [PIN]
skills_also: [FOR, STR]
life_areas: [opening things]
age_floor_months: 36
floor_reason: "Small parts."
effect: settling
senses: [tactile]
mess: 0
space: table
sound: quiet
supervision: beside
hands: 1
energy: low
position: [chair, wheelchair]
words_needed: few
easier: [{lever: size, text: "Larger pot"}]
harder: [{lever: size, text: "Smaller pot"}]
ways_in: {one_hand: "The pot stands on the towel."}
cautions: [SMALL]
watch_for: ["A bead on the floor."]
stop_when: ["If anything goes to the mouth."]
say: ["I heard that one land."]
put_back: ["Six beads: count together", "Lid on"]
no_box: false
video_ok: true
view: hands
claim: customary
swaps:
  - {item: beads, with: blocks, text: "Blocks instead."}
)";

const std::vector<SourceFile> &items()
{
    static const std::vector<SourceFile> files = soundItems();
    return files;
}

SourceFile activityFile(const std::string &text)
{
    return {"activities/pebble-post.yaml", text};
}

Catalogue loadActivity(const std::string &text)
{
    const std::vector<SourceFile> files{activityFile(text)};
    return load(items(), files);
}

std::string replaced(std::string text, const std::string &what, const std::string &with)
{
    const std::size_t at = text.find(what);
    return at == std::string::npos ? std::string() : text.replace(at, what.size(), with);
}

int lineAt(const std::string &text, std::size_t position)
{
    return 1 + static_cast<int>(std::count(text.begin(), text.begin() + position, '\n'));
}

QString shown(const std::vector<Problem> &problems)
{
    QString lines;
    for (const Problem &problem : problems)
        lines += QString::fromStdString(problem.text()) + "\n";
    return lines;
}

QString words(int count)
{
    return QString("word ").repeated(count).trimmed();
}

} // namespace

class TestCatalogueLoad : public QObject
{
    Q_OBJECT

private slots:
    void aSoundCatalogueLoadsWhole();
    void aMistakeInAnActivityIsNamed_data();
    void aMistakeInAnActivityIsNamed();
    void whatIsMissingIsNamedAtItsRecord_data();
    void whatIsMissingIsNamedAtItsRecord();
    void aFloorIsAtLeastThatOfItsTags_data();
    void aFloorIsAtLeastThatOfItsTags();
    void aMistakeInAnItemIsNamed_data();
    void aMistakeInAnItemIsNamed();
    void everyMistakeOfAFileIsNamed();
    void aFileThatIsNoRecordIsNamed_data();
    void aFileThatIsNoRecordIsNamed();
    void aBrokenFileTakesNoOtherDown();
    void whatNamesABrokenItemIsLeftOutWithItsOwnLine();
    void twoFilesCannotHoldOneId();
    void twoEntriesCannotHaveOneNumber();
    void anInsteadOfItemBringsItsTags();
    void aTowelBringsNone();
    void noTextWhateverThrows();
};

void TestCatalogueLoad::aSoundCatalogueLoadsWhole()
{
    const Catalogue catalogue = loadActivity(soundActivity);
    QVERIFY2(catalogue.problems().empty(), qPrintable(shown(catalogue.problems())));
    QCOMPARE(catalogue.items().size(), 5U);
    const Activity *activity = catalogue.activity({"pebble-post"});
    QVERIFY(activity);
    QCOMPARE(activity->invite, std::string("Will the pebble fit?"));
    QCOMPARE(activity->minutes, (Minutes{1, 5, 1}));
    QCOMPARE(activity->steps.size(), 2U);
    QVERIFY(!activity->steps[0].picture);
    QCOMPARE(activity->steps[1].picture->drawing, std::string("scene-pebble-post-2"));
    QCOMPARE(activity->items[0].countBack, 6);
    QCOMPARE(activity->items[1].role, Role::Nice);
    QCOMPARE(activity->family(), Skill::Pin);
    QCOMPARE(activity->cautions, TagSet{Tag::Small});
    QCOMPARE(activity->waysIn.oneHand, std::string("The pot stands on the towel."));
    QCOMPARE(activity->swaps[0].with, ItemId{"blocks"});
    QCOMPARE(catalogue.item({"beads"})->swap->with, ItemId{"blocks"});
    QVERIFY(!catalogue.item({"nothing"}));
    QVERIFY(!catalogue.activity({"nothing"}));
}

void TestCatalogueLoad::aMistakeInAnActivityIsNamed_data()
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
    row("adult line of 26 words", "Sit beside the child with the beads in one pot.", words(26),
        "adult_line", "must have at most 25 words, not 26");
    row("no life area too many", "[opening things]", "[dressing, settling, getting ready, "
        "opening things]", "life_areas", "must have 0 to 3 lines, not 4");
    row("three main skills", "[PIN]", "[PIN, TRI, BIL]", "skills_main", "must have 1 to 2 lines");
    row("no main skill", "[PIN]", "[]", "skills_main", "must have 1 to 2 lines, not 0");
    row("three other skills", "[FOR, STR]", "[FOR, STR, TAC]", "skills_also",
        "must have 0 to 2 lines");
    row("a skill main and other", "[FOR, STR]", "[STR, PIN]", "skills_also", "is a main skill already");
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

void TestCatalogueLoad::aMistakeInAnActivityIsNamed()
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

void TestCatalogueLoad::whatIsMissingIsNamedAtItsRecord_data()
{
    QTest::addColumn<QString>("field");
    // Every field of activities.md 1.1 that an entry must have.
    for (const char *field :
         {"id",         "entry",        "version",          "status",       "name",
          "invite",     "adult_line",   "picture",          "steps",        "minutes",
          "items",      "skills_main",  "skills_also",      "life_areas",   "age_floor_months",
          "floor_reason", "effect",     "senses",           "mess",         "space",
          "sound",      "supervision",  "hands",            "energy",       "position",
          "words_needed", "easier",     "harder",           "ways_in",      "cautions",
          "watch_for",  "stop_when",    "say",              "put_back",     "no_box",
          "video_ok",   "view",         "claim"})
        QTest::newRow(field) << field;
}

void TestCatalogueLoad::whatIsMissingIsNamedAtItsRecord()
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

void TestCatalogueLoad::aFloorIsAtLeastThatOfItsTags_data()
{
    QTest::addColumn<QString>("tag");
    QTest::addColumn<int>("floor");
    // Source: activities.md 1.4, column Rule, copied by hand.
    const std::pair<const char *, int> floors[] = {
        {"SMALL", 36}, {"BALLOON", 60}, {"ELASTIC", 60}, {"BAND", 48}, {"CORD", 36},
        {"SHARP", 36}, {"COIN", 48},    {"FOAM", 36},    {"FOIL", 36}, {"STRAW", 48},
        {"DOUGH", 24}, {"STICKER", 30}, {"FORK", 30}};
    for (const auto &[tag, floor] : floors)
        QTest::newRow(tag) << tag << floor;
}

void TestCatalogueLoad::aFloorIsAtLeastThatOfItsTags()
{
    QFETCH(QString, tag);
    QFETCH(int, floor);
    // Without beads, which would ask for 36 by themselves.
    std::string text = replaced(soundActivity, "item: beads, qty", "item: blocks, qty");
    text = replaced(text, "  - {item: beads, with: blocks, text: \"Blocks instead.\"}\n",
                    "  []\n");
    text = replaced(text, "cautions: [SMALL]", QString("cautions: [%1]").arg(tag).toStdString());
    const auto withFloor = [&text](int months) {
        const QString line = QString("age_floor_months: %1").arg(months);
        return loadActivity(replaced(text, "age_floor_months: 36", line.toStdString()));
    };
    QCOMPARE(shown(withFloor(floor).problems()), QString());
    const Catalogue tooEarly = withFloor(floor - 1);
    QCOMPARE(tooEarly.problems().size(), 1U);
    QCOMPARE(tooEarly.problems()[0].field, std::string("age_floor_months"));
    QCOMPARE(tooEarly.problems()[0].line, 19);
    QCOMPARE(QString::fromStdString(tooEarly.problems()[0].reason),
             QString("must be at least %1 for %2").arg(floor).arg(tag));
}

void TestCatalogueLoad::aMistakeInAnItemIsNamed_data()
{
    QTest::addColumn<QString>("text");
    QTest::addColumn<int>("line");
    QTest::addColumn<QString>("field");
    QTest::addColumn<QString>("reason");
    const auto row = [](const char *name, const std::string &text, int line, const char *field,
                        const char *reason) {
        QTest::newRow(name) << QString::fromStdString(text) << line << field << reason;
    };
    const std::string sound = item("cone", "box", "SMALL");
    row("unknown tag", replaced(sound, "[SMALL]", "[WET]"), 8, "tags[1]", "is not one of");
    row("unknown way of coming back", replaced(sound, "\"yes\"", "maybe"), 7, "comes_back",
        "is not one of");
    row("a home item on the lid list", replaced(sound, "source: box", "source: home"), 6,
        "lid_count", "must be 0 for an item of the home");
    row("unknown allergen", replaced(sound, "allergens: []", "allergens: [dust]"), 9, "allergens",
        "\"dust\" is not an allergen known here");
    row("latex without its tag", replaced(sound, "allergens: []", "allergens: [latex]"), 8, "tags",
        "the tag LATEX and the allergen latex go together");
    row("wheat without its tag", replaced(sound, "allergens: []", "allergens: [wheat]"), 8, "tags",
        "the tag WHEAT and the allergen wheat go together");
    row("a sphere of two measures", sound + "measures: {shape: sphere, mm: [10, 5]}\n", 13,
        "measures.mm", "must have 1 to 1 lines, not 2");
    row("a measure below zero", sound + "measures: {shape: sphere, mm: [-1]}\n", 13,
        "measures.mm[1]", "must be a number of millimetres above 0");
    row("a measure that is no number", sound + "measures: {shape: sphere, mm: [wide]}\n", 13,
        "measures.mm[1]", "must be a number of millimetres above 0");
    row("a measure that is not a number at all", sound + "measures: {shape: sphere, mm: [nan]}\n",
        13, "measures.mm[1]", "must be a number of millimetres above 0");
    row("a swap for itself", sound + "swap: {with: cone, note: x}\n", 13, "swap.with",
        "cannot stand in for itself");
    row("a swap nobody knows", sound + "swap: {with: moon, note: x}\n", 13, "swap.with",
        "there is no sound item \"moon\"");
    row("a life of no days", sound + "life: {opened_days: 0}\n", 13, "life.opened_days",
        "must be 1 to 3650");
    row("an unknown life", sound + "life: {lasts: 3}\n", 13, "life.lasts", "not a field");
    row("no drawing", replaced(sound, "drawing: item-cone\n", ""), 1, "drawing", "is missing");
    row("another id", replaced(sound, "id: cone", "id: crown"), 1, "id", "must be the file's name");
}

void TestCatalogueLoad::aMistakeInAnItemIsNamed()
{
    QFETCH(QString, text);
    QFETCH(int, line);
    QFETCH(QString, field);
    QFETCH(QString, reason);
    const std::vector<SourceFile> files{itemFile("cone", text.toStdString())};
    const Catalogue catalogue = load(files, {});
    QVERIFY(catalogue.items().empty());
    QVERIFY2(catalogue.problems().size() == 1, qPrintable(shown(catalogue.problems())));
    QCOMPARE(catalogue.problems()[0].file, std::string("items/cone.yaml"));
    QCOMPARE(catalogue.problems()[0].line, line);
    QCOMPARE(QString::fromStdString(catalogue.problems()[0].field), field);
    QVERIFY2(QString::fromStdString(catalogue.problems()[0].reason).contains(reason),
             qPrintable(shown(catalogue.problems())));
}

void TestCatalogueLoad::everyMistakeOfAFileIsNamed()
{
    std::string text = replaced(soundActivity, "mess: 0", "mess: 9");
    text = replaced(text, "space: table", "space: moon");
    text = replaced(text, "claim: customary\n", "");
    const Catalogue catalogue = loadActivity(text);
    QCOMPARE(catalogue.problems().size(), 3U);
    QCOMPARE(catalogue.problems()[0].text(),
             std::string("activities/pebble-post.yaml:1: claim: is missing"));
    QCOMPARE(catalogue.problems()[1].text(),
             std::string("activities/pebble-post.yaml:23: mess: must be 0 to 2"));
    QCOMPARE(catalogue.problems()[2].text(),
             std::string("activities/pebble-post.yaml:24: space: \"moon\" is not one of: lap, "
                         "table, mat, room"));
}

void TestCatalogueLoad::aFileThatIsNoRecordIsNamed_data()
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
    row("a surrogate", QByteArray("a: \xED\xA0\x80\n", 7), 0, "not plain UTF-8");
    row("beyond U+10FFFF", QByteArray("a: \xF4\x90\x80\x80\n", 8), 0, "not plain UTF-8");
    row("a torn letter at the end", QByteArray("a: \xE2\x82", 5), 0, "not plain UTF-8");
    row("Latin-1", QByteArray("a: caf\xE9 au lait\n"), 0, "not plain UTF-8");
    row("UTF-16", QByteArray("\xFF\xFE" "a\0:\0", 6), 0, "not plain UTF-8");
    row("a zero byte", QByteArray("a: \0b\n", 6), 0, "not plain UTF-8");
    row("a byte too large", "a: " + QByteArray(256 * 1024, 'x') + "\n", 0, "larger than 256 KiB");
    // The shape of the well-known "billion laughs" file, which grows tenfold a line.
    row("aliases that multiply",
        "a: &a [x, x]\nb: &b [*a, *a, *a]\nc: &c [*b, *b, *b]\nd: [*c, *c, *c]\n", 1,
        "an anchor (&) is not allowed");
    row("an alias of itself", "a: &a [*a]\n", 1, "is not allowed");
    row("a type mark", "a: !thing {b: 1}\n", 1, "a type mark (!) is not allowed");
    row("brackets nested deeply", "a: " + QByteArray(100'000, '[') + QByteArray(100'000, ']'),
        1, "nested too deeply");
    row("braces nested deeply", "a: " + QByteArray("{a: ").repeated(60'000), 1,
        "nested too deeply");
    row("dashes nested deeply", QByteArray("- ").repeated(100'000) + "x", 1, "nested too deeply");
    row("too many values", "a: [" + QByteArray("1,").repeated(50'000) + "1]\n", 1,
        "too many values");
    row("a group for a name", "{a: 1}: 2\n", 1, "must be one word");
}

void TestCatalogueLoad::aFileThatIsNoRecordIsNamed()
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

void TestCatalogueLoad::aBrokenFileTakesNoOtherDown()
{
    std::vector<SourceFile> files = items();
    files.push_back(itemFile("cone", "id: cone\n"));
    const std::vector<SourceFile> activities{activityFile(soundActivity)};
    const Catalogue catalogue = load(files, activities);
    QCOMPARE(catalogue.items().size(), items().size());
    QCOMPARE(catalogue.activities().size(), 1U);
    QVERIFY(std::all_of(catalogue.problems().begin(), catalogue.problems().end(),
                        [](const Problem &p) { return p.file == "items/cone.yaml"; }));
}

void TestCatalogueLoad::whatNamesABrokenItemIsLeftOutWithItsOwnLine()
{
    // The blocks break; the beads' swap needs them, and the activity needs the beads.
    std::vector<SourceFile> files = items();
    files[1].text = replaced(files[1].text, "version: 1", "version: one");
    const std::vector<SourceFile> activities{activityFile(soundActivity)};
    const Catalogue catalogue = load(files, activities);
    QCOMPARE(catalogue.items().size(), 3U);
    QVERIFY(catalogue.activities().empty());
    QCOMPARE(shown(catalogue.problems()),
             QString("items/blocks.yaml:2: version: must be a whole number\n"
                     "items/beads.yaml:13: swap.with: there is no sound item \"blocks\"\n"
                     "activities/pebble-post.yaml:14: items[1].item: there is no sound item "
                     "\"beads\"\n"
                     "activities/pebble-post.yaml:44: swaps[1].with: there is no sound item "
                     "\"blocks\"\n"));
}

void TestCatalogueLoad::twoFilesCannotHoldOneId()
{
    std::vector<SourceFile> files = items();
    files.push_back({"spare/blocks.yaml", item("blocks", "box", "SMALL")});
    const Catalogue catalogue = load(files, {});
    QCOMPARE(shown(catalogue.problems()),
             QString("spare/blocks.yaml:1: id: another file has this id already\n"));
    QVERIFY(catalogue.item({"blocks"})->tags.empty());
}

void TestCatalogueLoad::twoEntriesCannotHaveOneNumber()
{
    const std::vector<SourceFile> activities{
        activityFile(soundActivity),
        {"activities/pebble-pot.yaml",
         replaced(soundActivity, "id: pebble-post", "id: pebble-pot")}};
    const Catalogue catalogue = load(items(), activities);
    QCOMPARE(catalogue.activities().size(), 1U);
    QVERIFY(catalogue.activity({"pebble-post"}));
    QCOMPARE(shown(catalogue.problems()),
             QString("activities/pebble-pot.yaml:2: entry: is the number of pebble-post already\n"));
}

void TestCatalogueLoad::anInsteadOfItemBringsItsTags()
{
    const Catalogue catalogue = loadActivity(
        replaced(soundActivity, "{item: towel, qty: 1, source: home, role: nice, fate: comes-back}",
                 "{item: bladder, qty: 1, source: box, role: instead-of, fate: comes-back, "
                 "count_back: 1}"));
    QCOMPARE(shown(catalogue.problems()),
             QString("activities/pebble-post.yaml:34: cautions: LATEX is missing: bladder carries "
                     "it\n"));
}

void TestCatalogueLoad::aTowelBringsNone()
{
    // activities.md 1.3: "The cautions of an activity are at least all tags of its items, towel
    // apart"; the sample has a towel (FACE) and does not list FACE.
    QVERIFY(soundActivity.find("item: towel") != std::string::npos);
    QVERIFY(loadActivity(soundActivity).problems().empty());
}

void TestCatalogueLoad::noTextWhateverThrows()
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

QTEST_APPLESS_MAIN(TestCatalogueLoad)
#include "tst_catalogue_load.moc"
