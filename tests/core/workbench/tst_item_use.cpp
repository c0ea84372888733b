#include <QTest>

#include "core/wording/build_words.h"
#include "core/workbench/item_use.h"

#include "golden_build.h"

#include <QRegularExpression>
#include <QSet>

using namespace lidlark;
using namespace lidlark::workbench;

namespace {

/// As tests/data/first_eighty.csv calls the items of a standard box.
const std::map<QString, std::string> &idsByName()
{
    static const std::map<QString, std::string> ids{
        {"lacing card", "card"},      {"lace", "lace"},        {"pieces", "pieces"},
        {"rubber bands", "bands"},    {"pegs", "pegs"},        {"scissors", "scissors"},
        {"short crayons", "crayons"}, {"dough", "dough"},      {"eyes", "eyes"},
        {"slit ball", "ball"},        {"pom-poms", "pompoms"}, {"balloon", "balloon"},
        {"dropper", "dropper"},       {"straw", "straw"},      {"resistance band", "rband"}};
    return ids;
}

/// Entries of the table that name the item: a second reading, of what the catalogue was written
/// from.
QStringList entriesWith(const std::string &item)
{
    QStringList entries;
    for (const shipped::Row &row : shipped::firstEighty()) {
        for (const QString &name : row.at("items").split(", ")) {
            const auto id = idsByName().find(name);
            if (id != idsByName().end() && id->second == item)
                entries.append(row.at("number"));
        }
    }
    return entries;
}

/// Of those entries, the ones whose file lets a home lend something instead, or says the item is
/// only nice to have. Read off the text, without the loader.
int savedWithout(const std::string &item, const QStringList &entries)
{
    const QString id = QString::fromStdString(item);
    const QRegularExpression lent("\\{item: " + id +
                                  ", with: (lids|towel|cups|book|tin|spoon|paper|tray)\\b");
    const QRegularExpression nice("\\{item: " + id + ",[^}]*role: nice");
    int saved = 0;
    for (const auto &file : shipped::filesIn("activities")) {
        const QString text = QString::fromStdString(file.text);
        const auto entry = QRegularExpression("(?m)^entry: (A\\d+)").match(text).captured(1);
        if (entries.contains(entry) && (text.contains(lent) || text.contains(nice)))
            ++saved;
    }
    return saved;
}

const ItemPlay &of(const PlayInBox &play, const char *item)
{
    return *std::ranges::find(play.items, ItemId{item}, &ItemPlay::item);
}

} // namespace

/// How much play each item brings, against a count of the table by hand.
class TestItemUse : public QObject
{
    Q_OBJECT

    lidlark::catalogue::Catalogue m_catalogue = shipped::catalogue();
    std::vector<BoxPart> m_standard = golden::box("standard", "").parts;

private slots:
    void everyItemOfTheStandardBoxAsTheTableHasIt()
    {
        const PlayInBox play = playIn(m_standard, m_catalogue);
        QCOMPARE(play.activities, 80);
        for (const auto &[name, id] : idsByName()) {
            const QStringList entries = entriesWith(id);
            const ItemPlay &item = of(play, id.c_str());
            QVERIFY2(!entries.isEmpty(), id.c_str());
            QVERIFY2(item.activities == entries.size(), id.c_str());
            QVERIFY2(item.lost == entries.size() - savedWithout(id, entries), id.c_str());
        }
        // Counted by hand in the table: A18, A22, A37, A42, A55; A39, A49; A58, A59.
        QCOMPARE(of(play, "pegs").activities, 5);
        QCOMPARE(of(play, "eyes").activities, 2);
        QCOMPARE(of(play, "balloon").activities, 2);
        QVERIFY(!of(play, "box").known);
    }

    void withoutABoxOnlyWhatAHomeLends()
    {
        int lent = 0; // rows that name nothing of a box
        for (const shipped::Row &row : shipped::firstEighty()) {
            bool fromBox = false;
            for (const QString &name : row.at("items").split(", "))
                fromBox = fromBox || idsByName().contains(name);
            lent += fromBox ? 0 : 1;
        }
        const int made = playIn({}, m_catalogue).activities;
        int saved = 0; // and what a home's own swap makes possible
        for (const auto &[name, id] : idsByName())
            saved += savedWithout(id, entriesWith(id));
        QVERIFY(made >= lent);
        QVERIFY(made <= lent + saved);
    }

    void anItemThatHasNothingToDoIsSaidSo()
    {
        std::vector<BoxPart> parts = m_standard;
        parts.push_back({{"sponge"}, 1, {}}); // stands in for a dropper, which is there
        const PlayInBox play = playIn(parts, m_catalogue);
        QVERIFY(of(play, "sponge").isIdle());
        QCOMPARE(
            QString::fromStdString(wording::fill(wording::itemPlaySentence(of(play, "sponge")))),
            QString("This item has nothing to do in this box: no play takes it."));
        std::erase_if(parts, [](const BoxPart &part) { return part.item == ItemId{"dropper"}; });
        QVERIFY(of(playIn(parts, m_catalogue), "sponge").activities > 0);
    }

    void oneUseIsAlmostNothing()
    {
        const ItemPlay one{{"x"}, true, 1, 1};
        QCOMPARE(QString::fromStdString(wording::fill(wording::itemPlaySentence(one))),
                 QString("This item has almost nothing to do in this box: one play takes it."));
        QCOMPARE(
            QString::fromStdString(wording::fill(wording::itemPlaySentence({{"x"}, true, 5, 4}))),
            QString("Plays that take it: 5. Lost without it: 4."));
    }

    void bladesForEitherHandAreScissors()
    {
        std::vector<BoxPart> parts = m_standard;
        for (BoxPart &part : parts) {
            if (part.item == ItemId{"scissors"})
                part.item = {"scissors-left"};
        }
        QCOMPARE(playIn(parts, m_catalogue).activities, 80);
    }
};

QTEST_APPLESS_MAIN(TestItemUse)
#include "tst_item_use.moc"
