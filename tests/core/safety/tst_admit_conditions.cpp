#include <QTest>

#include "gate_samples.h"

using namespace samples;

/// What a therapist has noted of a home, and what measures alone say. Expectations are written from
/// safety.md 1 (the rows named beside each check) and activities.md 2.1.

class TestAdmitConditions : public QObject
{
    Q_OBJECT

private slots:
    void smallPartsNeedTheTherapistsConditionWhereASmallChildLives();
    void theConditionNeedsAHighPlace();
    void theConditionOpensNothingInTheRoom();
    void withoutAHomeSheetThereIsNoCondition();
    void aStiffHollowIsKeptFromAnUnderThree();
    void anAllergenNobodySpokeOfKeepsItsItemAway();
    void aLatexRiskIsReadAsAnAllergy();
    void aTherapistLowersAFloorForOneVersion();
    void noTagsFloorGivesWay();
    void aYesForAnEarlierVersionHidesUntilRenewed();
    void aSwapMayAskForAnOlderChild();
    void aPieceThatIsMadeStaysSmallInEverySwap();
    void aSwapBringsTheCautionsItIsWrittenWith();
};

void TestAdmitConditions::smallPartsNeedTheTherapistsConditionWhereASmallChildLives()
{
    // SP-01: "Where the under-three is another child of the home, a therapist may record a
    // condition"; the stricter rule wins (design.md), so without one nothing small is offered.
    for (const Tag tag : {Tag::Small, Tag::Coin}) {
        GateWorld world(items());
        world.room.present.emplace();
        QVERIFY(isAdmitted(world.judge(activityWith({tag}))));
        world.addChild("Mirren", 25, Answer::No);
        world.home.highStorage = true;
        QVERIFY(refusedWith(world.judge(activityWith({tag})),
                            {.code = ReasonCode::SmallInHome, .tag = tag}));
        world.mayHoldSmallParts();
        QVERIFY(isAdmitted(world.judge(activityWith({tag}))));
        QCOMPARE(form(world.judge(activityWith({tag}))).supervision(), Supervision::Beside);
    }
    GateWorld mouther(items());
    mouther.room.present.emplace();
    mouther.addChild("Tam", 60, Answer::Yes);
    QVERIFY(refusedFor(mouther.judge(activityWith({Tag::Small})), ReasonCode::SmallInHome));
    QVERIFY(isAdmitted(mouther.judge(activityWith({Tag::Dough}))));
}

void TestAdmitConditions::theConditionNeedsAHighPlace()
{
    // SP-01: "high storage: job.md scenario 5"; SP-04: out of the little one's reach.
    GateWorld world(items());
    world.room.present.emplace();
    world.addChild("Mirren", 25, Answer::No);
    world.mayHoldSmallParts();
    world.home.highStorage = false;
    QVERIFY(refusedWith(world.judge(activityWith({Tag::Small})),
                        {.code = ReasonCode::NoHighPlace, .tag = Tag::Small}));
}

void TestAdmitConditions::theConditionOpensNothingInTheRoom()
{
    GateWorld world(items());
    world.addChild("Mirren", 25, Answer::No);
    world.mayHoldSmallParts();
    QVERIFY(refusedFor(world.judge(activityWith({Tag::Small})), ReasonCode::UnderThreeInRoom));
}

void TestAdmitConditions::withoutAHomeSheetThereIsNoCondition()
{
    GateWorld world(items());
    world.hasHome = false;
    world.room.present.emplace();
    QVERIFY(refusedFor(world.judge(activityWith({Tag::Small})), ReasonCode::SmallInHome));
    QVERIFY(refusedFor(world.judge(activityWith({Tag::Small})), ReasonCode::NoHighPlace));
}

void TestAdmitConditions::aStiffHollowIsKeptFromAnUnderThree()
{
    // HM-01: "block such domes under 36 months"; a paper cup that crushes is none.
    std::vector<ItemKind> kinds = items();
    ItemKind tin = kind("tin", Source::Home, {Tag::Edge, Tag::Trace});
    tin.hazards.sealsAFace = true;
    kinds.insert(std::find_if(kinds.begin(), kinds.end(),
                              [](const ItemKind &k) { return k.id.value > "tin"; }),
                 tin);
    GateWorld world(kinds);
    Activity activity = activityWith({Tag::Edge, Tag::Trace});
    use(activity, "tin", 1);
    QVERIFY(isAdmitted(world.judge(activity)));
    world.addChild("Tam", 60, Answer::Yes); // A mouther of five has a wider face.
    QVERIFY(isAdmitted(world.judge(activity)));
    world.addChild("Mirren", 35, Answer::No);
    QVERIFY(
        refusedWith(world.judge(activity),
                    {.code = ReasonCode::StiffHollow, .item = ItemId{"tin"}, .name = "Mirren"}));
    world.room.present.emplace();
    QVERIFY(isAdmitted(world.judge(activity)));
}

void TestAdmitConditions::anAllergenNobodySpokeOfKeepsItsItemAway()
{
    // AL-01: "check every activity's ingredient tags (wheat, egg, milk, nut, soy, latex, adhesive,
    // dye) before offering".
    std::vector<ItemKind> kinds = items();
    for (const char *allergen : {"egg", "nut", "soy", "adhesive", "dye"}) {
        kinds.back().allergens = {allergen};
        GateWorld world(kinds);
        Activity activity = activityWith({Tag::Hyg});
        use(activity, "yoghurt", 1);
        const Reason reason{
            .code = ReasonCode::AllergenInHome, .item = ItemId{"yoghurt"}, .name = allergen};
        QVERIFY(refusedWith(world.judge(activity), reason));
        world.home.avoidances.more[allergen] = Answer::Yes;
        QVERIFY(refusedWith(world.judge(activity), reason));
        world.home.avoidances.more[allergen] = Answer::No;
        QVERIFY(isAdmitted(world.judge(activity)));
        world.hasHome = false;
        QVERIFY(refusedWith(world.judge(activity), reason));
    }
}

void TestAdmitConditions::aLatexRiskIsReadAsAnAllergy()
{
    // LA-01: "latex flag (allergy, spina bifida, many operations, or reaction to listed foods)";
    // LA-02 names the foods.
    GateWorld world(items());
    Activity activity = activityWith({});
    use(activity, "bands", 1);
    QVERIFY(isAdmitted(world.judge(activity)));
    world.home.avoidances.latexRisk = Answer::Yes;
    QVERIFY(refusedWith(world.judge(activity),
                        {.code = ReasonCode::LatexInHome, .item = ItemId{"bands"}}));
}

void TestAdmitConditions::aTherapistLowersAFloorForOneVersion()
{
    // activities.md 2.1.3: "The therapist may lower a floor only for skill reasons".
    GateWorld world(items());
    world.isMonthsOld(50);
    Activity activity = activityWith({});
    activity.ageFloorMonths = 60;
    activity.version = 3;
    QVERIFY(refusedFor(world.judge(activity), ReasonCode::BelowFloor));
    world.home.permissions.floors[activity.id] = {48, 3};
    QVERIFY(isAdmitted(world.judge(activity)));
    world.isMonthsOld(47);
    QVERIFY(refusedWith(world.judge(activity), {.code = ReasonCode::BelowFloor, .number = 48}));
    // A floor is lowered, never raised; and never for another version.
    world.isMonthsOld(60);
    world.home.permissions.floors[activity.id] = {72, 3};
    QVERIFY(isAdmitted(world.judge(activity)));
    world.isMonthsOld(50);
    world.home.permissions.floors[activity.id] = {48, 4};
    QVERIFY(refusedFor(world.judge(activity), ReasonCode::BelowFloor));
    world.home.permissions.floors = {{{"another"}, {48, 3}}};
    QVERIFY(refusedFor(world.judge(activity), ReasonCode::BelowFloor));
}

void TestAdmitConditions::noTagsFloorGivesWay()
{
    // activities.md 2.1.3: "never below the floor of any hard tag it carries (1.4)".
    GateWorld world(items());
    world.isMonthsOld(50);
    Activity activity = activityWith({Tag::Elastic});
    activity.ageFloorMonths = 72;
    world.home.permissions.floors[activity.id] = {48, 1};
    QVERIFY(refusedWith(world.judge(activity),
                        {.code = ReasonCode::BelowTagFloor, .tag = Tag::Elastic, .number = 60}));
    world.isMonthsOld(60);
    QVERIFY(isAdmitted(world.judge(activity)));
}

void TestAdmitConditions::aYesForAnEarlierVersionHidesUntilRenewed()
{
    // activities.md 2.1.2: "a version newer than the local safety permissions: hide"; events.md
    // 8.3: a permission "ends when the item's or activity's version rises".
    GateWorld world(items());
    Activity activity = activityWith({});
    activity.version = 2;
    QVERIFY(isAdmitted(world.judge(activity)));
    world.home.permissions.floors[activity.id] = {12, 1};
    QVERIFY(refusedFor(world.judge(activity), ReasonCode::PermissionOutdated));
    world.home.permissions.floors[activity.id] = {12, 2};
    QVERIFY(isAdmitted(world.judge(activity)));
}

void TestAdmitConditions::aSwapMayAskForAnOlderChild()
{
    Activity activity = activityWith({});
    use(activity, "crayons", 1);
    activity.swaps.push_back({{"crayons"}, {"chunky"}, {}, 48, "The fat one."});
    GateWorld world(items());
    world.box.items.erase({"crayons"});
    world.isMonthsOld(47);
    QVERIFY(!isAdmitted(world.judge(activity)));
    // A lower floor for the entry does not make the swap younger.
    world.home.permissions.floors[activity.id] = {12, 1};
    QVERIFY(!isAdmitted(world.judge(activity)));
    world.isMonthsOld(48);
    QVERIFY(isAdmitted(world.judge(activity)));
}

void TestAdmitConditions::aPieceThatIsMadeStaysSmallInEverySwap()
{
    // activities.md 1.4, PAPER: "an entry that makes smaller ones (snips) carries SMALL".
    Activity activity = activityWith({});
    use(activity, "crayons", 1);
    allowSwap(activity, "crayons", "chunky");
    GateWorld world(items());
    world.box.items.erase({"crayons"});
    QVERIFY(!form(world.judge(activity)).cautions().has(Tag::Small));
    activity.madeTags.add(Tag::Small);
    QVERIFY(form(world.judge(activity)).cautions().has(Tag::Small));
}

void TestAdmitConditions::aSwapBringsTheCautionsItIsWrittenWith()
{
    Activity activity = activityWith({});
    use(activity, "crayons", 1);
    activity.swaps.push_back({{"crayons"}, {"chunky"}, {Tag::Trip}, 0, "Across the room."});
    GateWorld world(items());
    QVERIFY(!form(world.judge(activity)).cautions().has(Tag::Trip));
    world.box.items.erase({"crayons"});
    QVERIFY(form(world.judge(activity)).cautions().has(Tag::Trip));
}

QTEST_APPLESS_MAIN(TestAdmitConditions)
#include "tst_admit_conditions.moc"
