#include <QTest>

#include "shipped_catalogue.h"

#include <functional>
#include <set>

using namespace lidlark;
using namespace lidlark::catalogue;
using shipped::Row;

// activities.md section 5 (tests/data/coverage.csv is a copy of its three tables), counted again:
// once from the files of the catalogue, once from the table they were written from.

namespace {

/// What the coverage tables ask of one entry, whichever way it was read.
struct Entry {
    QString number;
    std::set<QString> skills;
    std::set<QString> items; ///< "eyes", "~tray".
    std::set<QString> tags;
    int floor = 0;
    QString effect; ///< alerting, settling, either.
    int hands = 2;
    bool low = false;
    QString space;
    bool noBox = false;
};

QString written(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

Entry entryOf(const Activity &activity)
{
    Entry entry;
    entry.number = QString::fromStdString(activity.entry);
    for (const auto *skills : {&activity.skillsMain, &activity.skillsAlso}) {
        for (const Skill skill : *skills)
            entry.skills.insert(written(skillCodes.of(skill)));
    }
    for (const ItemUse &use : activity.items)
        entry.items.insert((use.source == Source::Home ? "~" : "") +
                           QString::fromStdString(use.item.value));
    for (const Tag tag : activity.cautions.list())
        entry.tags.insert(written(tagNames.of(tag)));
    entry.floor = activity.ageFloorMonths;
    entry.effect = written(effectNames.of(activity.effect));
    entry.hands = activity.hands;
    entry.low = activity.energy == Energy::Low;
    entry.space = written(spaceNames.of(activity.space));
    entry.noBox = activity.noBox;
    return entry;
}

std::set<QString> setOf(const QString &list, const QString &separator, const QString &none)
{
    if (list == none)
        return {};
    const QStringList parts = list.split(separator);
    return {parts.begin(), parts.end()};
}

Entry entryOf(const Row &row)
{
    static const std::map<QString, QString> effects{
        {"A", "alerting"}, {"S", "settling"}, {"E", "either"}};
    Entry entry;
    entry.number = row.at("number");
    entry.skills = setOf(row.at("skills"), " ", "");
    for (const QString &name : setOf(row.at("items"), ", ", "nothing"))
        entry.items.insert(shipped::itemIdOf(name));
    entry.tags = setOf(row.at("cautions"), " ", "none");
    entry.floor = row.at("floor_reason").section(':', 0, 0).toInt();
    entry.effect = effects.at(row.at("effect"));
    entry.hands = row.at("hands").toInt();
    entry.low = row.at("energy") == "lo";
    entry.space = row.at("space");
    entry.noBox = row.at("no_box") == "yes";
    return entry;
}

using Asks = std::function<bool(const Entry &)>;

Asks without(const QStringList &tags)
{
    return [tags](const Entry &entry) {
        return std::none_of(tags.begin(), tags.end(),
                            [&entry](const QString &tag) { return entry.tags.contains(tag); });
    };
}

Asks floorBetween(int low, int high)
{
    return [low, high](const Entry &entry) { return entry.floor >= low && entry.floor <= high; };
}

/// The Need table's rows. Tags that are "hard" are those of activities.md 1.4, column Gate.
const std::map<QString, Asks> &needs()
{
    static const QStringList nearSmallOnes{"SMALL", "COIN", "BALLOON", "ELASTIC",
                                           "FOAM",  "FOIL", "STRAW",   "CORD"};
    static const QStringList nearMouthers = nearSmallOnes + QStringList{"STICKER", "DOUGH"};
    static const QStringList unknownChild =
        nearMouthers +
        QStringList{"LATEX", "BAND", "SHARP", "WHEAT", "FORK", "TRACE", "WATER", "TOUCH"};
    static const std::map<QString, Asks> table{
        {"floor 18\u201323 months", floorBetween(18, 23)},
        {"floor 24\u201335 months", floorBetween(24, 35)},
        {"floor 36\u201347", floorBetween(36, 47)},
        {"floor 48\u201359", floorBetween(48, 59)},
        {"floor 60\u201371", floorBetween(60, 71)},
        {"floor 72 and over", floorBetween(72, 999)},
        {"alerting", [](const Entry &entry) { return entry.effect == "alerting"; }},
        {"settling", [](const Entry &entry) { return entry.effect == "settling"; }},
        {"either", [](const Entry &entry) { return entry.effect == "either"; }},
        {"one hand or none", [](const Entry &entry) { return entry.hands < 2; }},
        {"low energy", [](const Entry &entry) { return entry.low; }},
        {"low energy and not settling",
         [](const Entry &entry) { return entry.low && entry.effect != "settling"; }},
        {"lap only", [](const Entry &entry) { return entry.space == "lap"; }},
        {"no box", [](const Entry &entry) { return entry.noBox; }},
        {"unknown child",
         [](const Entry &entry) { return entry.floor == 18 && without(unknownChild)(entry); }},
        {"may be offered with a mouther in the room", without(nearMouthers)},
        {"may be offered with an under-three who no longer mouths", without(nearSmallOnes)},
        {"latex-free without any swap", without({"LATEX"})}};
    return table;
}

/// Nothing when no rule is known for the row. A row may say in brackets or after a colon what it
/// means.
Asks needOf(const QString &name)
{
    const auto need = needs().find(name.section(" (", 0, 0).section(": ", 0, 0));
    return need == needs().end() ? Asks{} : need->second;
}

Asks askOf(const Row &row)
{
    const QString name = row.at("name");
    if (row.at("table") == "skill")
        return [name](const Entry &entry) { return entry.skills.contains(name); };
    if (row.at("table") == "item")
        return
            [id = shipped::itemIdOf(name)](const Entry &entry) { return entry.items.contains(id); };
    return needOf(name);
}

QString numbersOf(const std::vector<Entry> &entries, const Asks &asks)
{
    std::set<QString> numbers;
    for (const Entry &entry : entries) {
        if (asks(entry))
            numbers.insert(entry.number);
    }
    return QStringList(numbers.begin(), numbers.end()).join(' ');
}

} // namespace

class TestCatalogueCoverage : public QObject
{
    Q_OBJECT

private slots:
    void initTestCase();
    void aRowIsAsCounted_data();
    void aRowIsAsCounted();
    void nothingIsLeftUncounted();

private:
    std::vector<Row> m_rows;
    std::vector<Entry> m_files;
    std::vector<Entry> m_table;
    Catalogue m_catalogue;
};

void TestCatalogueCoverage::initTestCase()
{
    m_rows = shipped::rowsOf("tests/data/coverage.csv");
    m_catalogue = shipped::catalogue();
    for (const Activity &activity : m_catalogue.activities())
        m_files.push_back(entryOf(activity));
    for (const Row &row : shipped::firstEighty())
        m_table.push_back(entryOf(row));
    QCOMPARE(m_files.size(), 80U);
    QCOMPARE(m_table.size(), 80U);
}

void TestCatalogueCoverage::aRowIsAsCounted_data()
{
    QTest::addColumn<int>("index");
    for (std::size_t i = 0; i < m_rows.size(); ++i)
        QTest::newRow(qPrintable(m_rows[i].at("table") + " " + m_rows[i].at("name")))
            << static_cast<int>(i);
}

void TestCatalogueCoverage::aRowIsAsCounted()
{
    QFETCH(int, index);
    const Row &row = m_rows[static_cast<std::size_t>(index)];
    const Asks asks = askOf(row);
    QVERIFY(asks);
    QCOMPARE(row.at("entries").split(' ').size(), row.at("count").toInt());
    QCOMPARE(numbersOf(m_table, asks), row.at("entries"));
    QCOMPARE(numbersOf(m_files, asks), row.at("entries"));
}

/// Every skill and every thing that comes out of a box has a row.
void TestCatalogueCoverage::nothingIsLeftUncounted()
{
    std::set<QString> skills;
    std::set<QString> items;
    std::size_t needRows = 0;
    for (const Row &row : m_rows) {
        if (row.at("table") == "skill")
            skills.insert(row.at("name"));
        else if (row.at("table") == "item")
            items.insert(shipped::itemIdOf(row.at("name")));
        else
            ++needRows;
    }
    QCOMPARE(skills.size(), skillCount);
    for (const ItemKind &item : m_catalogue.items()) {
        if (item.lidCount > 0)
            QVERIFY2(items.contains(QString::fromStdString(item.id.value)), item.id.value.c_str());
    }
    QCOMPARE(needRows, needs().size());
}

QTEST_APPLESS_MAIN(TestCatalogueCoverage)
#include "tst_catalogue_coverage.moc"
