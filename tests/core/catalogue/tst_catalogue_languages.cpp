#include <QTest>

#include "catalogue_samples.h"
#include "core/catalogue/translation.h"
#include "shipped_catalogue.h"

#include <set>

using namespace lidlark::catalogue;

// The translations this repository ships fit the English they were made from.

namespace {

// STRICT: set to true once both languages are written; then a missing file is a failure.
constexpr bool everyEntryMustBeThere = true;

constexpr std::size_t shippedActivities = 80;
constexpr std::size_t shippedItems = 44;

const char *const languages[] = {"pl", "ur"};

QString folderOf(const QString &language)
{
    return "languages/" + language;
}

template <class Entry> std::size_t countTranslated(const std::vector<Entry> &entries)
{
    return static_cast<std::size_t>(
        std::count_if(entries.begin(), entries.end(),
                      [](const Entry &entry) { return entry.wordsOrigin != WordsOrigin::Ours; }));
}

} // namespace

class TestCatalogueLanguages : public QObject
{
    Q_OBJECT

private slots:
    void initTestCase();
    void everyTranslationFits_data() { eachLanguage(); }
    void everyTranslationFits();
    void noTwoActivitiesHaveOneName_data() { eachLanguage(); }
    void noTwoActivitiesHaveOneName();

private:
    static void eachLanguage();
    Catalogue m_english;
};

void TestCatalogueLanguages::eachLanguage()
{
    QTest::addColumn<QString>("language");
    for (const char *language : languages)
        QTest::newRow(language) << QString(language);
}

void TestCatalogueLanguages::initTestCase()
{
    m_english = shipped::catalogue();
    QCOMPARE(m_english.activities().size(), shippedActivities);
    QCOMPARE(m_english.items().size(), shippedItems);
}

void TestCatalogueLanguages::everyTranslationFits()
{
    QFETCH(QString, language);
    const std::vector<SourceFile> files = shipped::filesIn(folderOf(language));
    const Catalogue catalogue = translate(m_english, files);
    QVERIFY2(catalogue.untranslated().empty(),
             qPrintable(samples::shown(catalogue.untranslated())));
    const bool items = std::any_of(files.begin(), files.end(), [](const SourceFile &file) {
        return file.name.ends_with("/items.yaml");
    });
    const std::size_t pages = files.size() - (items ? 1 : 0);
    QCOMPARE(countTranslated(catalogue.activities()),
             everyEntryMustBeThere ? shippedActivities : pages);
    QCOMPARE(countTranslated(catalogue.items()),
             everyEntryMustBeThere || items ? shippedItems : 0U);
}

void TestCatalogueLanguages::noTwoActivitiesHaveOneName()
{
    QFETCH(QString, language);
    const Catalogue catalogue = translate(m_english, shipped::filesIn(folderOf(language)));
    std::set<std::string> names;
    for (const Activity &activity : catalogue.activities())
        QVERIFY2(names.insert(activity.name).second, activity.id.value.c_str());
}

QTEST_APPLESS_MAIN(TestCatalogueLanguages)
#include "tst_catalogue_languages.moc"
