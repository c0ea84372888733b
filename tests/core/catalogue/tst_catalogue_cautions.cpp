#include <QTest>

#include "catalogue_samples.h"
#include "tests/core/tag_floors.h"

using namespace samples;

// Cautions against items and floors: activities.md 1.3 and 1.4.

class TestCatalogueCautions : public QObject
{
    Q_OBJECT

private slots:
    void aFloorIsAtLeastThatOfItsTags_data();
    void aFloorIsAtLeastThatOfItsTags();
    void anInsteadOfItemBringsItsTags();
    void aTowelBringsNoFace();
    void whatIsForSittingIsNotForStanding_data();
    void whatIsForSittingIsNotForStanding();
};

void TestCatalogueCautions::aFloorIsAtLeastThatOfItsTags_data()
{
    addTagFloorRows();
}

void TestCatalogueCautions::aFloorIsAtLeastThatOfItsTags()
{
    QFETCH(QString, tag);
    QFETCH(int, floor);
    // Without beads, which would ask for 36 by themselves.
    std::string text = replaced(soundActivity, "item: beads, qty", "item: blocks, qty");
    text =
        replaced(text, "  - {item: beads, with: blocks, cautions: [], text: \"Blocks instead.\"}\n",
                 "  []\n");
    text = replaced(text, "Six beads: count together", "Balloon and blocks: count together");
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

void TestCatalogueCautions::anInsteadOfItemBringsItsTags()
{
    const Catalogue catalogue = loadActivity(
        replaced(soundActivity, "{item: towel, qty: 1, source: home, role: nice, fate: comes-back}",
                 "{item: bladder, qty: 1, source: box, role: instead-of, fate: comes-back, "
                 "count_back: 1}"));
    QCOMPARE(shown(catalogue.problems()),
             QString("activities/pebble-post.yaml:34: cautions: LATEX is missing: bladder carries "
                     "it\n"));
}

void TestCatalogueCautions::aTowelBringsNoFace()
{
    // activities.md 1.3: "The cautions of an activity are at least all tags of its items, towel
    // apart", for FACE only where it is used near the body; the sample has a towel (FACE) and does
    // not list FACE.
    QVERIFY(soundActivity.find("item: towel") != std::string::npos);
    QVERIFY(loadActivity(soundActivity).problems().empty());
    std::vector<SourceFile> files = items();
    files.back() = itemFile("towel", item("towel", "home", "FACE, PET"));
    const std::vector<SourceFile> activities{activityFile(soundActivity)};
    QCOMPARE(shown(load(files, activities).problems()),
             QString("activities/pebble-post.yaml:34: cautions: PET is missing: towel carries "
                     "it\n"));
}

void TestCatalogueCautions::whatIsForSittingIsNotForStanding_data()
{
    QTest::addColumn<QString>("tag");
    QTest::addColumn<bool>("sitting");
    // activities.md 1.4: SHARP "seated, beside", STRAW "seated the whole time", FORK "seated".
    for (const char *tag : {"SHARP", "STRAW", "FORK"})
        QTest::newRow(tag) << tag << true;
    QTest::newRow("TRIP") << "TRIP" << false;
}

void TestCatalogueCautions::whatIsForSittingIsNotForStanding()
{
    QFETCH(QString, tag);
    QFETCH(bool, sitting);
    std::string text = replaced(soundActivity, "[SMALL]", "[SMALL, " + tag.toStdString() + "]");
    text = replaced(text, "age_floor_months: 36", "age_floor_months: 48");
    QVERIFY(loadActivity(text).problems().empty());
    const auto problems =
        loadActivity(replaced(text, "[chair, wheelchair]", "[chair, standing]")).problems();
    QCOMPARE(shown(problems), sitting ? QString("activities/pebble-post.yaml:29: position: "
                                                "standing is not for %1\n")
                                            .arg(tag)
                                      : QString());
}

QTEST_APPLESS_MAIN(TestCatalogueCautions)
#include "tst_catalogue_cautions.moc"
