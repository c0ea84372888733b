#include <QTest>

#include "core/catalogue/care_about.h"
#include "core/catalogue/family_lines.h"
#include "translation_samples.h"

using namespace samples;

// A translation changes words and nothing else; one that does not fit its English stays away whole.

class TestTranslate : public QObject
{
    Q_OBJECT

private slots:
    void theWordsAreTheTranslationsAndTheRestIsTheEnglish();
    void everyLineAFamilyReadsIsTranslated();
    void theEnglishIsKeptUnderAMachinesWords();
    void whatHasNoTranslationStaysEnglish();
    void aReviewedTranslationIsChecked();
    void anItemsWordsAreTranslated();
    void aCareLineIsFoundByItsEnglish();
    void oneFaultyItemTakesNoOtherDown();
    void anItemThatNobodyHasIsNamed();
    void whatDoesNotFitStaysWhollyEnglish_data();
    void whatDoesNotFitStaysWhollyEnglish();
    void anActivityThatNobodyHasIsNamed();
    void aTornFileIsNamed();
};

void TestTranslate::theWordsAreTheTranslationsAndTheRestIsTheEnglish()
{
    const Catalogue catalogue = translated(soundTranslation, soundItemWords);
    QVERIFY2(catalogue.untranslated().empty(), qPrintable(shown(catalogue.untranslated())));
    const Activity *activity = catalogue.activity({"pebble-post"});
    QVERIFY(activity);
    QCOMPARE(activity->name, std::string("Poczta kamyków"));
    QCOMPARE(activity->steps[1].picture->alt, std::string("Koralik spada."));
    QCOMPARE(activity->steps[1].picture->drawing, std::string("scene-pebble-post-2"));
    QCOMPARE(activity->easier[0].text, std::string("Większy garnek"));
    QCOMPARE(activity->easier[0].lever, Lever::Size);
    QCOMPARE(activity->swaps[0].text, std::string("Zamiast nich klocki."));
    QCOMPARE(activity->swaps[0].with, ItemId{"blocks"});
    QCOMPARE(activity->cautions, TagSet{Tag::Small});
    QCOMPARE(activity->ageFloorMonths, 36);
    QCOMPARE(activity->items, inEnglish(*activity).items);
}

void TestTranslate::everyLineAFamilyReadsIsTranslated()
{
    const Catalogue catalogue = translated(soundTranslation, soundItemWords);
    const Activity &activity = *catalogue.activity({"pebble-post"});
    const auto english = everyLine(inEnglish(activity));
    const auto lines = everyLine(activity);
    QCOMPARE(lines.size(), english.size());
    for (std::size_t i = 0; i < lines.size(); ++i)
        QVERIFY2(lines[i].text != english[i].text, lines[i].field.c_str());
}

void TestTranslate::theEnglishIsKeptUnderAMachinesWords()
{
    const Catalogue catalogue = translated(soundTranslation, soundItemWords);
    const Activity &activity = *catalogue.activity({"pebble-post"});
    QVERIFY(isUnchecked(activity));
    QCOMPARE(activity.wordsOrigin, WordsOrigin::MachineMade);
    QCOMPARE(inEnglish(activity).watchFor[0], std::string("A bead on the floor."));
    QCOMPARE(inEnglish(activity).name, std::string("Pebble Post"));
    QVERIFY(isUnchecked(*catalogue.item({"beads"})));
    QCOMPARE(inEnglish(*catalogue.item({"beads"})).care[0], std::string("Wipe."));
}

void TestTranslate::whatHasNoTranslationStaysEnglish()
{
    const Catalogue catalogue = translate(loadActivity(soundActivity), {});
    const Activity &activity = *catalogue.activity({"pebble-post"});
    QCOMPARE(activity.wordsOrigin, WordsOrigin::Ours);
    QVERIFY(!isUnchecked(activity));
    QCOMPARE(activity.name, std::string("Pebble Post"));
    QCOMPARE(&inEnglish(activity), &activity);
    QVERIFY(catalogue.untranslated().empty());
}

void TestTranslate::aReviewedTranslationIsChecked()
{
    const Catalogue catalogue = translated(replaced(soundTranslation, "machine-made", "reviewed"),
                                           replaced(soundItemWords, "machine-made", "reviewed"));
    QVERIFY2(catalogue.untranslated().empty(), qPrintable(shown(catalogue.untranslated())));
    QVERIFY(!isUnchecked(*catalogue.activity({"pebble-post"})));
    QVERIFY(!isUnchecked(*catalogue.item({"beads"})));
    QCOMPARE(catalogue.item({"beads"})->wordsOrigin, WordsOrigin::Reviewed);
}

void TestTranslate::anItemsWordsAreTranslated()
{
    const Catalogue catalogue = translated(soundTranslation, soundItemWords);
    const ItemKind &beads = *catalogue.item({"beads"});
    QCOMPARE(beads.name, std::string("koraliki"));
    QCOMPARE(beads.one, std::string("koralik"));
    QCOMPARE(beads.swap->note, std::string("Duże"));
    QCOMPARE(beads.swap->with, ItemId{"blocks"});
    QVERIFY(beads.tags.has(Tag::Small));
    QCOMPARE(catalogue.item({"blocks"})->name, std::string("blocks"));
}

/// What an item is made of decides whether it stays in a home: found in every language alike.
void TestTranslate::aCareLineIsFoundByItsEnglish()
{
    const Catalogue catalogue = translated(soundTranslation, soundItemWords);
    const ItemKind &beads = *catalogue.item({"beads"});
    QCOMPARE(careAbout(beads, "Wipe"), std::optional<std::size_t>(0));
    QCOMPARE(careAbout(beads, "Przetrzyj"), std::optional<std::size_t>());
    QCOMPARE(careAbout(beads, "latex"), std::optional<std::size_t>());
}

void TestTranslate::oneFaultyItemTakesNoOtherDown()
{
    const Catalogue catalogue =
        translated(soundTranslation, replaced(soundItemWords, ", swap_note: \"Duże\"", ""));
    QCOMPARE(catalogue.untranslated().size(), 1U);
    QCOMPARE(catalogue.untranslated()[0].text(),
             std::string("languages/pl/items.yaml:3: items.beads.swap_note: is missing"));
    QCOMPARE(catalogue.item({"beads"})->name, std::string("beads"));
    QCOMPARE(catalogue.item({"beads"})->care[0], std::string("Wipe."));
    QCOMPARE(catalogue.item({"towel"})->name, std::string("ręczniki"));
}

void TestTranslate::anItemThatNobodyHasIsNamed()
{
    const Catalogue catalogue =
        translated(soundTranslation, replaced(soundItemWords, "  towel:", "  towels:"));
    QCOMPARE(shown(catalogue.untranslated()),
             QString("languages/pl/items.yaml:4: items.towels: there is no sound item of this "
                     "name\n"));
    QCOMPARE(catalogue.item({"beads"})->name, std::string("koraliki"));
}

void TestTranslate::whatDoesNotFitStaysWhollyEnglish_data()
{
    QTest::addColumn<std::string>("written");
    QTest::addColumn<std::string>("instead");
    QTest::addColumn<std::string>("problem");
    const auto row = [](const char *story, const char *written, const char *instead,
                        const char *problem) {
        QTest::newRow(story) << std::string(written) << std::string(instead)
                             << std::string(problem);
    };
    row("made from another version", "of_version: 1", "of_version: 2",
        ":2: of_version: was made from version 2; the English is version 1");
    row("a status of the English", "machine-made", "ours",
        ":3: status: must be machine-made or reviewed");
    row("another id", "id: pebble-post", "id: pebble-mail",
        ":1: id: must be the file's name, \"pebble-post\"");
    row("a step less", "  - {text: \"Postaw garnek 20 cm od dziecka.\"}\n", "",
        ":9: steps: must have 2 to 2 lines, not 1");
    row("a picture less", ", alt: \"Koralik spada.\"", "", ":10: steps[2].alt: is missing");
    row("a picture more", "dziecka.\"}", "dziecka.\", alt: \"Nic.\"}",
        ":9: steps[1].alt: is not in the English: Nic.");
    row("a line less", ", \"Pokrywka\"", "", ":18: put_back: must have 2 to 2 lines, not 1");
    row("a caution more", "\"Koralik na podłodze.\"", "\"Koralik na podłodze.\", \"Oko.\"",
        ":15: watch_for: must have 1 to 1 lines, not 2");
    row("no grading", "[\"Większy garnek\"]", "[]", ":12: easier: must have 1 to 1 lines, not 0");
    row("a swap less", "swaps: [\"Zamiast nich klocki.\"]\n", "", ":1: swaps: is missing");
    row("a way in more", "one_hand", "seated: \"Na krześle.\", one_hand",
        ":14: ways_in.seated: is not in the English: Na krześle.");
    row("pieces that are not made",
        "say:", "makes: [\"ścinki\"]\nsay:", ":17: makes: must have 0 to 0 lines, not 1");
    row("another length", "20 cm", "2 cm",
        ":9: steps[1].text: has other numbers than the English: 2 instead of 20");
    row("a length that got lost", "20 cm", "kawałek",
        ":9: steps[1].text: has other numbers than the English: none instead of 20");
    row("a field nobody knows",
        "say:", "sing: \"La.\"\nsay:", ":17: sing: is not a field known here");
    row("an empty line", "\"Jeśli coś trafia do ust.\"", "\" \"",
        ":16: stop_when[1]: must not be empty");
}

void TestTranslate::whatDoesNotFitStaysWhollyEnglish()
{
    QFETCH(std::string, written);
    QFETCH(std::string, instead);
    QFETCH(std::string, problem);
    const Catalogue catalogue =
        translated(replaced(soundTranslation, written, instead), soundItemWords);
    QCOMPARE(shown(catalogue.untranslated()),
             QString::fromStdString("languages/pl/pebble-post.yaml" + problem + "\n"));
    const Activity &activity = *catalogue.activity({"pebble-post"});
    QCOMPARE(activity.wordsOrigin, WordsOrigin::Ours);
    for (const FamilyLine &line : everyLine(activity))
        QVERIFY2(soundActivity.find(line.text) != std::string::npos, line.field.c_str());
    QVERIFY(catalogue.problems().empty());
    QCOMPARE(catalogue.item({"beads"})->name, std::string("koraliki"));
}

void TestTranslate::anActivityThatNobodyHasIsNamed()
{
    const std::vector<SourceFile> files{{"languages/pl/sand-post.yaml", soundTranslation}};
    const Catalogue catalogue = translate(loadActivity(soundActivity), files);
    QCOMPARE(shown(catalogue.untranslated()),
             QString("languages/pl/sand-post.yaml: id: there is no sound activity "
                     "\"sand-post\"\n"));
}

void TestTranslate::aTornFileIsNamed()
{
    const Catalogue catalogue = translated(soundTranslation.substr(0, 40), "items: [");
    QCOMPARE(catalogue.activity({"pebble-post"})->name, std::string("Pebble Post"));
    QCOMPARE(catalogue.item({"beads"})->name, std::string("beads"));
    QVERIFY(catalogue.untranslated().size() > 2U);
}

QTEST_APPLESS_MAIN(TestTranslate)
#include "tst_translate.moc"
