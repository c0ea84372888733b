#include <QFile>
#include <QTest>

#include "shipped_catalogue.h"

#include <set>

using namespace lidlark;
using namespace lidlark::catalogue;
using shipped::Row;

// The catalogue we ship against the table of activities.md section 4, of which
// tests/data/first_eighty.csv is a copy.

namespace {

std::set<QString> itemsOf(const Row &row)
{
    std::set<QString> items;
    if (row.at("items") == "nothing")
        return items;
    for (const QString &name : row.at("items").split(", "))
        items.insert(shipped::itemIdOf(name));
    return items;
}

std::set<QString> itemsOf(const Activity &activity)
{
    std::set<QString> items;
    for (const ItemUse &use : activity.items)
        items.insert((use.source == Source::Home ? "~" : "") +
                     QString::fromStdString(use.item.value));
    return items;
}

QString written(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

QString skillsOf(const Activity &activity)
{
    QStringList codes;
    for (const auto *skills : {&activity.skillsMain, &activity.skillsAlso}) {
        for (const Skill skill : *skills)
            codes << written(skillCodes.of(skill));
    }
    return codes.join(' ');
}

std::set<QString> cautionsOf(const Activity &activity)
{
    std::set<QString> tags;
    for (const Tag tag : activity.cautions.list())
        tags.insert(written(tagNames.of(tag)));
    return tags;
}

std::set<QString> cautionsOf(const Row &row)
{
    if (row.at("cautions") == "none")
        return {};
    const QStringList tags = row.at("cautions").split(' ');
    return {tags.begin(), tags.end()};
}

QString shown(const std::set<QString> &values)
{
    return QStringList(values.begin(), values.end()).join(' ');
}

/// Items and scenes are composed from data; the build makes "item-ball" of items/ball.yaml.
bool isDrawn(const QString &name)
{
    const QString folder = name.startsWith("item-") ? "items/" : "scenes/";
    return QFile::exists(shipped::source("assets/drawings/") + folder + name.section('-', 1) +
                         ".yaml");
}

} // namespace

class TestCatalogueContent : public QObject
{
    Q_OBJECT

private slots:
    void initTestCase();
    void everyFileIsSound();
    void everyDrawingIsThere();
    void allEightyAreThereAndNothingElse();
    void anEntryIsAsInTheTable_data();
    void anEntryIsAsInTheTable();

private:
    const Activity *entry(const QString &number) const;

    Catalogue m_catalogue;
    std::vector<Row> m_rows;
};

void TestCatalogueContent::initTestCase()
{
    m_catalogue = shipped::catalogue();
    m_rows = shipped::firstEighty();
    QCOMPARE(m_rows.size(), 80U);
}

const Activity *TestCatalogueContent::entry(const QString &number) const
{
    for (const Activity &activity : m_catalogue.activities()) {
        if (activity.entry == number.toStdString())
            return &activity;
    }
    return nullptr;
}

/// A name that no file has would show as a dotted frame.
void TestCatalogueContent::everyDrawingIsThere()
{
    QStringList names;
    for (const ItemKind &item : m_catalogue.items())
        names << QString::fromStdString(item.drawing);
    for (const Activity &activity : m_catalogue.activities()) {
        names << QString::fromStdString(activity.picture.drawing);
        for (const Step &step : activity.steps) {
            if (step.picture)
                names << QString::fromStdString(step.picture->drawing);
        }
    }
    names.removeDuplicates();
    QVERIFY(names.size() > 80);
    for (const QString &name : std::as_const(names))
        QVERIFY2(isDrawn(name), qPrintable(name));
}

void TestCatalogueContent::everyFileIsSound()
{
    QString problems;
    for (const Problem &problem : m_catalogue.problems())
        problems += QString::fromStdString(problem.text()) + "\n";
    QVERIFY2(problems.isEmpty(), qPrintable(problems));
    QVERIFY(!m_catalogue.items().empty());
}

void TestCatalogueContent::allEightyAreThereAndNothingElse()
{
    for (const Row &row : m_rows)
        QVERIFY2(entry(row.at("number")), qPrintable(row.at("number")));
    QCOMPARE(m_catalogue.activities().size(), m_rows.size());
}

void TestCatalogueContent::anEntryIsAsInTheTable_data()
{
    QTest::addColumn<int>("index");
    for (std::size_t i = 0; i < m_rows.size(); ++i)
        QTest::newRow(qPrintable(m_rows[i].at("number"))) << static_cast<int>(i);
}

void TestCatalogueContent::anEntryIsAsInTheTable()
{
    QFETCH(int, index);
    const Row &row = m_rows[static_cast<std::size_t>(index)];
    const Activity *activity = entry(row.at("number"));
    QVERIFY(activity);
    static const std::map<QString, Effect> effects{
        {"A", Effect::Alerting}, {"S", Effect::Settling}, {"E", Effect::Either}};
    static const std::map<QString, Energy> energies{
        {"lo", Energy::Low}, {"med", Energy::Medium}, {"hi", Energy::High}};
    QCOMPARE(QString::fromStdString(activity->name), row.at("name"));
    QCOMPARE(QString::fromStdString(activity->id.value),
             row.at("name").toLower().remove(',').replace(' ', '-'));
    QCOMPARE(shown(itemsOf(*activity)), shown(itemsOf(row)));
    QCOMPARE(skillsOf(*activity), row.at("skills"));
    QCOMPARE(activity->ageFloorMonths, row.at("floor_reason").section(':', 0, 0).toInt());
    QCOMPARE(activity->effect, effects.at(row.at("effect")));
    QCOMPARE(activity->mess, row.at("mess").toInt());
    QCOMPARE(written(spaceNames.of(activity->space)), row.at("space"));
    QCOMPARE(written(supervisionNames.of(activity->supervision)), row.at("supervision"));
    QCOMPARE(activity->hands, row.at("hands").toInt());
    QCOMPARE(activity->energy, energies.at(row.at("energy")));
    QCOMPARE(shown(cautionsOf(*activity)), shown(cautionsOf(row)));
    QCOMPARE(activity->noBox, row.at("no_box") == "yes");
    // activities.md 1.1: the first eighty are complete, and no clinician has signed them.
    QCOMPARE(activity->status, Status::AwaitingReview);
}

QTEST_APPLESS_MAIN(TestCatalogueContent)
#include "tst_catalogue_content.moc"
