#include <QTest>

#include "core/safety/admit.h"

#include <QDir>
#include <QFile>

#include <algorithm>
#include <map>
#include <set>

using namespace lidlark;
using namespace lidlark::catalogue;

// The catalogue we ship against the table of activities.md section 4, of which
// tests/data/first_eighty.csv is a copy, and against the counts of its section 5.

namespace {

QString source(const QString &path)
{
    return qEnvironmentVariable("LIDLARK_SOURCE_DIR") + "/" + path;
}

std::vector<SourceFile> filesIn(const QString &folder)
{
    std::vector<SourceFile> files;
    const QDir dir(source("assets/catalogue/" + folder));
    for (const QString &name : dir.entryList({"*.yaml"}, QDir::Files, QDir::Name)) {
        QFile file(dir.filePath(name));
        if (file.open(QIODevice::ReadOnly))
            files.push_back({(folder + "/" + name).toStdString(), file.readAll().toStdString()});
    }
    return files;
}

/// Splits one line of the table: commas separate, quotes hold a field together (RFC 4180).
QStringList fieldsOf(const QString &line)
{
    QStringList fields{{}};
    bool quoted = false;
    for (const QChar letter : line) {
        if (letter == '"')
            quoted = !quoted;
        else if (letter == ',' && !quoted)
            fields.append(QString());
        else
            fields.last() += letter;
    }
    return fields;
}

/// One row of the table, its fields by their names.
using Row = std::map<QString, QString>;

std::vector<Row> firstEighty()
{
    QFile file(source("tests/data/first_eighty.csv"));
    std::vector<Row> rows;
    if (!file.open(QIODevice::ReadOnly))
        return rows;
    const QStringList lines = QString::fromUtf8(file.readAll()).trimmed().split('\n');
    const QStringList names = fieldsOf(lines.first());
    for (const QString &line : lines.mid(1)) {
        const QStringList fields = fieldsOf(line);
        Row row;
        for (int i = 0; i < names.size(); ++i)
            row[names[i]] = fields.value(i);
        rows.push_back(row);
    }
    return rows;
}

/// Names of the table's Items column that are not item ids (activities.md 1.3 and 4).
QString idOf(const QString &tableName)
{
    static const std::map<QString, QString> ids{
        {"lacing card", "card"}, {"short crayons", "crayons"}, {"rubber bands", "bands"},
        {"slit ball", "ball"},   {"resistance band", "rband"}, {"pom-poms", "pompoms"},
        {"~soft toy", "~toy"}};
    const auto found = ids.find(tableName);
    return found == ids.end() ? tableName : found->second;
}

std::set<QString> itemsOf(const Row &row)
{
    std::set<QString> items;
    if (row.at("items") == "nothing")
        return items;
    for (const QString &name : row.at("items").split(", "))
        items.insert(idOf(name));
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

/// A box with plenty of everything that comes from a box, swaps apart.
safety::BoxState standardBox(const Catalogue &catalogue)
{
    safety::BoxState box;
    for (const ItemKind &item : catalogue.items()) {
        if (item.lidCount > 0)
            box.items[item.id] = {item.lidCount, false};
    }
    return box;
}

QString numbersIn(const std::vector<safety::Admitted> &admitted)
{
    std::set<QString> numbers;
    for (const safety::Admitted &form : admitted) {
        if (form.swaps().empty())
            numbers.insert(QString::fromStdString(form.activity().entry));
    }
    return shown(numbers);
}

} // namespace

class TestCatalogueContent : public QObject
{
    Q_OBJECT

private slots:
    void initTestCase();
    void everyFileIsSound();
    void everyEntryIsOneOfTheTable();
    void anEntryIsAsInTheTable_data();
    void anEntryIsAsInTheTable();
    void aBoxItemServesAtLeastTwoEntries();
    void whoIsInTheRoomDecidesAsCounted_data();
    void whoIsInTheRoomDecidesAsCounted();
    void anUnknownChildGetsTheFiveEntries();
    void aLatexFreeHomeGetsTheEntriesCounted();

private:
    const Activity *entry(const QString &number) const;

    Catalogue m_catalogue;
    std::vector<Row> m_rows;
    const Day m_today = *dayFrom({2027, 1, 11});
};

void TestCatalogueContent::initTestCase()
{
    m_catalogue = load(filesIn("items"), filesIn("activities"));
    m_rows = firstEighty();
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

void TestCatalogueContent::everyFileIsSound()
{
    QString problems;
    for (const Problem &problem : m_catalogue.problems())
        problems += QString::fromStdString(problem.text()) + "\n";
    QVERIFY2(problems.isEmpty(), qPrintable(problems));
    QVERIFY(!m_catalogue.items().empty());
}

void TestCatalogueContent::everyEntryIsOneOfTheTable()
{
    // The first eighty come in two steps: so far at least 24, and nothing that is not in the table.
    std::size_t there = 0;
    for (const Row &row : m_rows)
        there += entry(row.at("number")) ? 1U : 0U;
    QVERIFY(there >= 24U);
    QCOMPARE(m_catalogue.activities().size(), there);
}

void TestCatalogueContent::anEntryIsAsInTheTable_data()
{
    QTest::addColumn<int>("index");
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        if (entry(m_rows[i].at("number")))
            QTest::newRow(qPrintable(m_rows[i].at("number"))) << static_cast<int>(i);
    }
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

void TestCatalogueContent::aBoxItemServesAtLeastTwoEntries()
{
    // activities.md 2.3.
    for (const ItemKind &item : m_catalogue.items()) {
        if (item.lidCount == 0)
            continue;
        int uses = 0;
        for (const Activity &activity : m_catalogue.activities()) {
            for (const ItemUse &use : activity.items)
                uses += use.item == item.id ? 1 : 0;
        }
        QVERIFY2(uses >= 2, item.id.value.c_str());
    }
}

void TestCatalogueContent::whoIsInTheRoomDecidesAsCounted_data()
{
    QTest::addColumn<bool>("mouther");
    QTest::addColumn<QString>("numbers");
    // Source: activities.md section 5, the two lines "may be offered with ...", copied by hand.
    QTest::newRow("a mouther in the room")
        << true
        << "A01 A02 A03 A04 A05 A06 A07 A08 A09 A10 A11 A12 A14 A15 A16 A19 A20 A21 A26 A30 A32 "
           "A33 A34 A35 A36 A38 A45 A48 A50 A51 A52 A53 A60 A63 A65 A69 A71 A75 A79";
    QTest::newRow("an under-three who no longer mouths")
        << false
        << "A01 A02 A03 A04 A05 A06 A07 A08 A09 A10 A11 A12 A13 A14 A15 A16 A17 A19 A20 A21 A26 "
           "A30 A32 A33 A34 A35 A36 A38 A45 A47 A48 A50 A51 A52 A53 A60 A63 A65 A69 A71 A75 A79";
}

void TestCatalogueContent::whoIsInTheRoomDecidesAsCounted()
{
    QFETCH(bool, mouther);
    QFETCH(QString, numbers);
    const child::Child nine{{"c"}, "Oona", child::ageFromMonths(108, m_today), false, {}};
    child::HomeSheet home;
    home.avoidances = {
        child::Answer::No, child::Answer::No, child::Answer::No, child::Answer::No, {}};
    home.likesTouch = child::Answer::Yes;
    child::Person sibling{
        {"s"}, "Mirren", child::PersonKind::Child, child::ageFromMonths(25, m_today)};
    sibling.mouths = mouther ? child::Answer::Unanswered : child::Answer::No;
    home.people.push_back(sibling);
    safety::Room room;
    room.besideSaid = true;
    const safety::BoxState box = standardBox(m_catalogue);
    const safety::Gated gated = safety::admitAll({nine, &home, room, box, m_catalogue, m_today});
    QCOMPARE(numbersIn(gated.admitted), numbers);
}

void TestCatalogueContent::anUnknownChildGetsTheFiveEntries()
{
    // Source: activities.md section 5, "unknown child: floor 18, no hard tag, no TRACE, ...".
    const child::Child unknown{{"c"}, "Fin", std::nullopt, false, {}};
    const safety::Room room;
    const safety::BoxState box = standardBox(m_catalogue);
    const safety::Gated gated =
        safety::admitAll({unknown, nullptr, room, box, m_catalogue, m_today});
    QCOMPARE(numbersIn(gated.admitted), QString("A01 A03 A06 A08 A09"));
    QCOMPARE(gated.admitted.size() + gated.heldBack.size(), m_catalogue.activities().size());
}

void TestCatalogueContent::aLatexFreeHomeGetsTheEntriesCounted()
{
    // Source: activities.md section 5, "latex-free without any swap": 72 of 80, all but these.
    const child::Child nine{{"c"}, "Anya", child::ageFromMonths(108, m_today), false, {}};
    child::HomeSheet home;
    home.avoidances = {
        child::Answer::Yes, child::Answer::No, child::Answer::No, child::Answer::No, {}};
    home.likesTouch = child::Answer::Yes;
    const safety::Room room;
    const safety::BoxState box = standardBox(m_catalogue);
    const safety::Gated gated = safety::admitAll({nine, &home, room, box, m_catalogue, m_today});
    std::set<QString> held;
    for (const safety::HeldBack &one : gated.heldBack)
        held.insert(QString::fromStdString(one.activity->entry));
    QCOMPARE(shown(held), QString("A44 A57 A58 A59 A61 A72 A76 A80"));
}

QTEST_APPLESS_MAIN(TestCatalogueContent)
#include "tst_catalogue_content.moc"
