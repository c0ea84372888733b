#include <QTest>

#include "catalogue_samples.h"
#include "shipped_catalogue.h"

using namespace samples;

// How long an item lasts, how it is looked after, and how fast its pieces go: what a file may say
// (activities.md 1.3, safety.md HY-01 and RB-01, job.md T1 and T8), and what the shipped ones say.

namespace {

QString idsOf(const Catalogue &catalogue, bool (*wanted)(const ItemKind &))
{
    QStringList ids;
    for (const ItemKind &item : catalogue.items()) {
        if (wanted(item))
            ids << QString::fromStdString(item.id.value);
    }
    return ids.join(' ');
}

ItemKind onlyItem(const std::string &text)
{
    const std::vector<SourceFile> files{itemFile("cone", text)};
    const Catalogue catalogue = load(files, {});
    return catalogue.items().empty() ? ItemKind{} : catalogue.items().front();
}

} // namespace

class TestItemLife : public QObject
{
    Q_OBJECT

private slots:
    void initTestCase() { QVERIFY(m_shipped.problems().empty()); }
    void aMistakeIsNamed_data();
    void aMistakeIsNamed();
    void everythingWrittenIsRead();
    void nothingWrittenIsNoLimit();
    void eachOfThreeFieldsMakesItPerishable_data();
    void eachOfThreeFieldsMakesItPerishable();
    void everyShippedBoxItemHasAPrior();
    void theShippedPerishablesAreDoughAndStraws();
    void theShippedSingleChildItemsAreThoseOfTheTable();
    void theShippedLooksAreThoseOfTheTable();
    void boughtDoughHasNoDateOfItsOwn();

private:
    const Catalogue m_shipped = shipped::catalogue();
};

void TestItemLife::aMistakeIsNamed_data()
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
    const auto life = [&](const char *name, const std::string &fields, const char *field,
                          const char *reason) {
        row(name, sound + "life: {" + fields + "}\n", 17, field, reason);
    };
    const auto use = [&](const char *name, const std::string &fields, const char *field,
                         const char *reason) {
        row(name, replaced(sound, "{pieces: 1, days: 30}", fields), 16, field, reason);
    };
    life("no opened days", "opened_days: 0", "life.opened_days", "must be 1 to 3650");
    life("no open-air days", "open_air_days: 0", "life.open_air_days", "must be 1 to 365");
    life("no days to replacing", "replace_days: -1", "life.replace_days", "must be 1 to 3650");
    life("no days to a look", "check_days: 400, check: x", "life.check_days", "must be 1 to 365");
    life("a look without words", "check_days: 7", "life.check", "what is there to look for?");
    life("a look before each use without words", "check_each_use: true", "life.check",
         "what is there to look for?");
    life("words without a look", "check: x", "life.check", "when is it looked at?");
    life("a look that is no flag", "check_each_use: often", "life.check_each_use", "true or false");
    life("too many lines of rescue", "rescue: [a, b, c, d, e]", "life.rescue", "0 to 4");
    life("an empty line of rescue", "rescue: [\" \"]", "life.rescue[1]", "empty");
    life("an unknown life", "lasts: 3", "life.lasts", "not a field");
    row("a life that is no group", sound + "life: long\n", 17, "life", "named fields");

    row("no prior", replaced(sound, "use: {pieces: 1, days: 30}\n", ""), 1, "use", "is missing");
    row("a prior that is no group", replaced(sound, "{pieces: 1, days: 30}", "often"), 16, "use",
        "named fields");
    use("a prior without pieces", "{days: 30}", "use.pieces", "is missing");
    use("a prior of no pieces", "{pieces: 0, days: 30}", "use.pieces", "must be 1 to 1000");
    use("a prior of half a piece", "{pieces: 0.5, days: 30}", "use.pieces", "whole number");
    use("a prior of no days", "{pieces: 1, days: 0}", "use.days", "must be 1 to 3650");
    use("an unknown field of a prior", "{pieces: 1, days: 30, weeks: 2}", "use.weeks",
        "not a field");
    row("cleanable not said", replaced(sound, "cleanable: true\n", ""), 1, "cleanable",
        "is missing");
    row("shared though nobody can clean it",
        replaced(sound, "cleanable: true", "cleanable: false\nsingle_child: false"), 16,
        "single_child", "cannot be cleaned");
}

void TestItemLife::aMistakeIsNamed()
{
    QFETCH(QString, text);
    QFETCH(int, line);
    QFETCH(QString, field);
    QFETCH(QString, reason);
    const std::vector<SourceFile> files{itemFile("cone", text.toStdString())};
    const Catalogue catalogue = load(files, {});
    QVERIFY(catalogue.items().empty());
    const std::vector<Problem> &problems = catalogue.problems();
    QVERIFY2(problems.size() == 1, qPrintable(samples::shown(problems)));
    QCOMPARE(QString::fromStdString(problems[0].field), field);
    QCOMPARE(problems[0].line, line);
    QVERIFY2(QString::fromStdString(problems[0].reason).contains(reason),
             qPrintable(samples::shown(problems)));
}

void TestItemLife::everythingWrittenIsRead()
{
    const ItemKind cone = onlyItem(
        replaced(item("cone", "box", "SMALL"), "{pieces: 1, days: 30}", "{pieces: 3, days: 60}") +
        "single_child: true\nlife: {opened_days: 7, open_air_days: 3, replace_days: 183, "
        "check_days: 30, check_each_use: true, check: \"Is it soft?\", rescue: [Knead it., Wrap "
        "it.], single_use: true}\n");
    QCOMPARE(cone.id.value, std::string("cone"));
    const Life written{7, 3, 183, 30, true, "Is it soft?", {"Knead it.", "Wrap it."}, true};
    QVERIFY(cone.life == written);
    QVERIFY(cone.use == (UsePrior{3, 60}));
    QVERIFY(cone.cleanable);
    QVERIFY(cone.singleChild);
}

void TestItemLife::nothingWrittenIsNoLimit()
{
    const ItemKind cone = onlyItem(item("cone", "box", "SMALL"));
    QCOMPARE(cone.id.value, std::string("cone"));
    QVERIFY(cone.life == Life{});
    QVERIFY(!cone.singleChild);
    QVERIFY(!cone.isPerishable());
}

void TestItemLife::eachOfThreeFieldsMakesItPerishable_data()
{
    QTest::addColumn<QString>("field");
    QTest::addColumn<bool>("perishable");
    QTest::newRow("opened days") << "opened_days: 7" << true;
    QTest::newRow("open-air days") << "open_air_days: 3" << true;
    QTest::newRow("a rescue") << "rescue: [Knead it.]" << true;
    QTest::newRow("no rescue at all") << "rescue: []" << false;
    QTest::newRow("replaced by the calendar") << "replace_days: 183" << false;
    QTest::newRow("looked at") << "check_days: 30, check: x" << false;
    QTest::newRow("used once") << "single_use: true" << false;
}

void TestItemLife::eachOfThreeFieldsMakesItPerishable()
{
    QFETCH(QString, field);
    QFETCH(bool, perishable);
    const ItemKind cone =
        onlyItem(item("cone", "box", "SMALL") + "life: {" + field.toStdString() + "}\n");
    QCOMPARE(cone.id.value, std::string("cone"));
    QCOMPARE(cone.isPerishable(), perishable);
}

void TestItemLife::everyShippedBoxItemHasAPrior()
{
    const auto withPrior = [](const ItemKind &item) { return item.use.has_value(); };
    const auto ofABox = [](const ItemKind &item) { return item.source == Source::Box; };
    QCOMPARE(idsOf(m_shipped, withPrior), idsOf(m_shipped, ofABox));
    QCOMPARE(idsOf(m_shipped, ofABox).split(' ').size(), 25);
}

void TestItemLife::theShippedPerishablesAreDoughAndStraws()
{
    const auto perishable = [](const ItemKind &item) { return item.isPerishable(); };
    QCOMPARE(idsOf(m_shipped, perishable), QString("dough ricedough straw"));
}

void TestItemLife::theShippedSingleChildItemsAreThoseOfTheTable()
{
    // job.md T8: dough, straws, balloons, soft pieces (the felt, cloth and sponge ones).
    const auto single = [](const ItemKind &item) { return item.singleChild; };
    QCOMPARE(idsOf(m_shipped, single),
             QString("ball balloon dough fabricballs pompoms pouch ricedough scarf sponge straw"));
}

void TestItemLife::theShippedLooksAreThoseOfTheTable()
{
    // activities.md 1.3: dough weekly, bands monthly; a straw is replaced weekly, counted from its
    // first use. safety.md RB-01: the long band before every use, and new after six months.
    const auto life = [this](const char *id) { return m_shipped.item({id})->life; };
    QCOMPARE(life("dough").checkDays, std::optional<int>(7));
    QCOMPARE(life("ricedough").checkDays, std::optional<int>(7));
    QCOMPARE(life("bands").checkDays, std::optional<int>(30));
    QCOMPARE(life("loops").checkDays, std::optional<int>(30));
    QCOMPARE(life("straw").openedDays, std::optional<int>(7));
    QCOMPARE(life("straw").replaceDays, std::optional<int>());
    QVERIFY(life("rband").checkEachUse);
    QCOMPARE(life("rband").replaceDays, std::optional<int>(183));
    QVERIFY(life("balloon").singleUse);
}

void TestItemLife::boughtDoughHasNoDateOfItsOwn()
{
    // activities.md 1.3: home-made dough is thrown away after 7 days, bought dough by its feel.
    for (const char *id : {"dough", "ricedough"}) {
        const Life &life = m_shipped.item({id})->life;
        QVERIFY(!life.openedDays);
        QCOMPARE(life.openAirDays, std::optional<int>(3));
        QCOMPARE(life.rescue.size(), 4U);
    }
}

QTEST_APPLESS_MAIN(TestItemLife)
#include "tst_item_life.moc"
