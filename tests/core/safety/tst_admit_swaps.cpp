#include <QTest>

#include "gate_samples.h"

using namespace samples;

// Expectations are copied by hand from activities.md 1.3 (swaps) and 2.1.4; each
// row names its line there. The reference gives its own sources as [E...] in its section 7.

class TestAdmitSwaps : public QObject
{
    Q_OBJECT

private slots:
    void aSwapTakesAHardTagAway_data();
    void aSwapTakesAHardTagAway();
    void aSwapKeepsWhatItDoesNotReplace_data();
    void aSwapKeepsWhatItDoesNotReplace();
    void aSwapOnTheLidListIsUsed();
    void aSwapComesHomeByItsOwnRules();
    void twoPartsCannotShareTooFewSwaps();
    void asLittleAsPossibleIsSwapped();
};

void TestAdmitSwaps::aSwapTakesAHardTagAway_data()
{
    QTest::addColumn<QString>("item");
    QTest::addColumn<QString>("with");
    QTest::addColumn<QString>("trouble");
    QTest::addColumn<QString>("tagsLeft");
    // activities.md 2.1.4, "If a swap is in the box: offer the swapped form with its own tags", and
    // 1.3, "A swap carries its own tags".
    QTest::newRow("pegs, an under-three") << "pegs"
                                          << "onepegs"
                                          << "under-three"
                                          << "PINCH";
    QTest::newRow("eyes, a mouther") << "eyes"
                                     << "lids"
                                     << "mouther"
                                     << "";
    QTest::newRow("coins, a mouther") << "coins"
                                      << "lids"
                                      << "mouther"
                                      << "";
    QTest::newRow("crayons, an under-three") << "crayons"
                                             << "chunky"
                                             << "under-three"
                                             << "";
    QTest::newRow("bands, latex") << "bands"
                                  << "loops"
                                  << "latex"
                                  << "ELASTIC";
    QTest::newRow("balloon, latex") << "balloon"
                                    << "scarf"
                                    << "latex"
                                    << "FACE";
    QTest::newRow("balloon, a baby lives here") << "balloon"
                                                << "scarf"
                                                << "baby at home"
                                                << "FACE";
    QTest::newRow("dough, wheat") << "dough"
                                  << "ricedough"
                                  << "wheat"
                                  << "DOUGH PET HYG";
    QTest::newRow("pegs, used up") << "pegs"
                                   << "onepegs"
                                   << "used up"
                                   << "PINCH";
    QTest::newRow("dough, dried out") << "dough"
                                      << "ricedough"
                                      << "past date"
                                      << "DOUGH PET HYG";
}

void TestAdmitSwaps::aSwapTakesAHardTagAway()
{
    QFETCH(QString, item);
    QFETCH(QString, with);
    QFETCH(QString, trouble);
    QFETCH(QString, tagsLeft);
    const ItemId original{item.toStdString()};
    const ItemId swap{with.toStdString()};
    Activity unswappable = activityWith({});
    use(unswappable, original.value, 2);
    Activity activity = unswappable;
    allowSwap(activity, original.value, swap.value);

    GateWorld world(items());
    QVERIFY2(form(world.judge(activity)).swaps().empty(), "swapped without need");
    world.room.present.emplace();
    if (trouble == "under-three")
        world.room.visitorUnderThree = true;
    else if (trouble == "mouther")
        world.room.visitorMouther = true;
    else if (trouble == "latex")
        world.home.avoidances.latex = Answer::Yes;
    else if (trouble == "wheat")
        world.home.avoidances.wheat = Answer::Yes;
    else if (trouble == "baby at home")
        world.addChild("Jamie", 9, Answer::Unanswered);
    else if (trouble == "used up")
        world.box.items[original].low = 1;
    else if (trouble == "past date")
        world.box.items[original].pastDate = true;

    const Admission admission = world.judge(activity);
    QVERIFY(isAdmitted(admission));
    QCOMPARE(form(admission).swaps(), (std::map<ItemId, ItemId>{{original, swap}}));
    QStringList left;
    for (const Tag tag : form(admission).cautions().list())
        left << written(tag);
    QCOMPARE(left.join(' '), tagsLeft);
    QCOMPARE(form(admission).items().front().item, swap);
    QCOMPARE(form(admission).items().front().quantity, 2);

    QVERIFY2(!isAdmitted(world.judge(unswappable)), "swapped in a way the entry does not list");
    GateWorld without = world;
    without.box.items.erase(swap);
    without.home.missingExtras.push_back(swap);
    QVERIFY2(!isAdmitted(without.judge(activity)), "swapped for what is not there");
    GateWorld tooFew = world;
    if (tooFew.box.items.contains(swap)) {
        tooFew.box.items[swap].low = 1;
        QVERIFY(!isAdmitted(tooFew.judge(activity)));
    }
}

void TestAdmitSwaps::aSwapKeepsWhatItDoesNotReplace_data()
{
    QTest::addColumn<QString>("items");
    QTest::addColumn<QString>("own");
    QTest::addColumn<bool>("admitted");
    // An under-three is in the room; pegs (PINCH SMALL) may be swapped for one-piece pegs.
    QTest::newRow("pegs alone") << "pegs"
                                << "" << true;
    QTest::newRow("pegs beside eyes: SMALL stays") << "pegs eyes"
                                                   << "" << false;
    // activities.md 1.4, PAPER: "an entry that makes smaller ones (snips) carries SMALL".
    QTest::newRow("pegs beside scissors: snips stay SMALL") << "pegs scissors paper"
                                                            << "" << false;
    QTest::newRow("pegs and the entry's own CORD") << "pegs"
                                                   << "CORD" << false;
    // What the body does stays.
    QTest::newRow("pegs and FACE, TRIP") << "pegs"
                                         << "FACE TRIP BREATH" << true;
}

void TestAdmitSwaps::aSwapKeepsWhatItDoesNotReplace()
{
    QFETCH(QString, items);
    QFETCH(QString, own);
    QFETCH(bool, admitted);
    TagSet tags;
    for (const QString &tag : own.split(' ', Qt::SkipEmptyParts))
        tags.add(tagNamed(tag));
    Activity activity = activityWith(tags);
    for (const QString &item : items.split(' '))
        use(activity, item.toStdString(), 1);
    if (items.contains("scissors"))
        activity.madeTags.add(Tag::Small);
    allowSwap(activity, "pegs", "onepegs");
    GateWorld world(::items());
    world.room.visitorUnderThree = true;
    const Admission admission = world.judge(activity);
    QCOMPARE(isAdmitted(admission), admitted);
    if (admitted)
        QCOMPARE(form(admission).cautions(), tags | TagSet{Tag::Pinch});
    // An entry whose cautions forgot the SMALL of its eyes and of its snips.
    Activity forgetful = activityWith({});
    use(forgetful, "eyes", 1);
    use(forgetful, "scissors", 1);
    forgetful.cautions = {Tag::Sharp};
    forgetful.madeTags = {Tag::Small};
    allowSwap(forgetful, "eyes", "lids");
    QVERIFY(!isAdmitted(world.judge(forgetful)));
    // What a body does stays when the thing goes: a scarf game keeps its FACE with a pouch.
    Activity floating = activityWith({});
    use(floating, "scarf", 1);
    allowSwap(floating, "scarf", "lids");
    world.box.items.erase({"scarf"});
    QCOMPARE(form(world.judge(floating)).cautions(), TagSet{Tag::Face});
}

void TestAdmitSwaps::aSwapOnTheLidListIsUsed()
{
    // activities.md 1.3: "Swap is what goes in the box instead; the gate never offers the original
    // once a swap is chosen."
    Activity activity = activityWith({});
    use(activity, "pegs", 4);
    allowSwap(activity, "pegs", "onepegs");
    GateWorld world(items());
    for (const bool listed : {false, true}) {
        world.box.items.erase({"pegs"});
        if (listed)
            world.box.items[{"pegs"}] = {0, false};
        QVERIFY(isAdmitted(world.judge(activity)));
        QCOMPARE(form(world.judge(activity)).swaps().at({"pegs"}), ItemId{"onepegs"});
        QVERIFY(!form(world.judge(activity)).cautions().has(Tag::Small));
    }
    // When the swap is away too, the reason names the swap, which is what this box holds.
    world.box.items[{"onepegs"}] = {3, false};
    QVERIFY(refusedWith(world.judge(activity),
                        {.code = ReasonCode::ItemUsedUp, .item = ItemId{"onepegs"}, .number = 4}));
}

void TestAdmitSwaps::aSwapComesHomeByItsOwnRules()
{
    // A balloon is used up and not counted; the scarf comes back and is.
    Activity activity = activityWith({});
    use(activity, "balloon", 1);
    allowSwap(activity, "balloon", "scarf");
    GateWorld world(items());
    QCOMPARE(form(world.judge(activity)).items().front().fate, Fate::UsedUp);
    world.home.avoidances.latex = Answer::Yes;
    const Admission admission = world.judge(activity);
    QVERIFY(isAdmitted(admission));
    const ItemUse &scarf = form(admission).items().front();
    QCOMPARE(scarf.fate, Fate::ComesBack);
    QCOMPARE(scarf.countBack, 1);
    // Part-used dough stays part-used, and its pot is counted.
    Activity kneading = activityWith({});
    use(kneading, "dough", 1);
    allowSwap(kneading, "dough", "ricedough");
    world.home.avoidances.wheat = Answer::Yes;
    const Admission pot = world.judge(kneading);
    QVERIFY(isAdmitted(pot));
    QCOMPARE(form(pot).items().front().fate, Fate::PartUsed);
    QCOMPARE(form(pot).items().front().countBack, 1);
}

void TestAdmitSwaps::twoPartsCannotShareTooFewSwaps()
{
    Activity activity = activityWith({});
    use(activity, "eyes", 4);
    use(activity, "pieces", 4);
    allowSwap(activity, "eyes", "chunky");
    allowSwap(activity, "pieces", "chunky");
    GateWorld world(items());
    world.room.visitorUnderThree = true;
    world.box.items[{"chunky"}] = {8, false};
    QVERIFY(isAdmitted(world.judge(activity)));
    world.box.items[{"chunky"}] = {7, false};
    QVERIFY(!isAdmitted(world.judge(activity)));
}

void TestAdmitSwaps::asLittleAsPossibleIsSwapped()
{
    Activity activity = activityWith({});
    use(activity, "dough", 1);
    use(activity, "pegs", 2);
    allowSwap(activity, "dough", "ricedough");
    allowSwap(activity, "pegs", "lids");
    allowSwap(activity, "pegs", "onepegs");
    GateWorld world(items());
    world.room.visitorUnderThree = true;
    // Only the pegs are in the way, and the first swap listed is taken.
    QCOMPARE(form(world.judge(activity)).swaps(), (std::map<ItemId, ItemId>{{{"pegs"}, {"lids"}}}));
    // The same where the pegs are gone from the box.
    world.room.visitorUnderThree = false;
    world.box.items.erase({"pegs"});
    QCOMPARE(form(world.judge(activity)).swaps(), (std::map<ItemId, ItemId>{{{"pegs"}, {"lids"}}}));
}

QTEST_APPLESS_MAIN(TestAdmitSwaps)
#include "tst_admit_swaps.moc"
