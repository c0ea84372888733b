#include <QTest>

#include "core/wording/catalogue_terms.h"
#include "core/wording/caution_words.h"
#include "core/wording/closing_words.h"
#include "tests/core/catalogue/translation_samples.h"

using namespace samples;
using namespace lidlark::wording;

/// Guards that the English under a translated caution is English whole (job.md scenario 10, traps).
class TestCatalogueTerms : public QObject
{
    Q_OBJECT

private slots:
    void whenToStopIsEnglishUnderATranslation()
    {
        const Catalogue polish = translated(soundTranslation, soundItemWords);
        const Activity &activity = *polish.activity({"pebble-post"});
        const std::vector<Sentence> shown = cautionsFor(activity.cautions, activity);
        const std::vector<Sentence> english = cautionsFor(activity.cautions, inEnglish(activity));
        QCOMPARE(shown.size(), english.size());
        bool stops = false;
        for (std::size_t i = 0; i < shown.size(); ++i) {
            QCOMPARE(fill(shown[i]), fill(english[i]));
            for (const Argument &argument : shown[i].arguments) {
                const auto *line = std::get_if<Translated>(&argument.content);
                stops = stops || (line != nullptr && line->text == activity.stopWhen.front());
            }
        }
        QVERIFY(stops);
    }

    void anItemsNameIsEnglishUnderATranslation()
    {
        const Catalogue polish = translated(soundTranslation, soundItemWords);
        const ItemKind &beads = *polish.item({"beads"});
        QCOMPARE(fill(countHomeFirst(nameOf(beads), 3, 6)),
                 fill(countHomeFirst(std::string("beads"), 3, 6)));
    }

    void whatIsNotTranslatedIsAPlainName()
    {
        const Catalogue english = loadActivity(soundActivity);
        QVERIFY(nameOf(*english.item({"beads"})) == Argument(std::string("beads")));
    }
};

QTEST_APPLESS_MAIN(TestCatalogueTerms)
#include "tst_catalogue_terms.moc"
