#pragma once

#include "dice.h"
#include "gate_samples.h"
#include "gate_world.h"

#include <algorithm>

/// Random children, homes, rooms, boxes and activities, drawn by RapidCheck, the general-purpose
/// library for such tests.
namespace drawn {

using namespace lidlark;
using namespace lidlark::catalogue;
using child::Answer;

inline bool chance(int percent)
{
    return between(0, 100) < percent;
}

template <class Value> Value oneOf(const std::vector<Value> &values)
{
    return values[between<std::size_t>(0, values.size())];
}

using samples::kind;

/// The sample items and those that only the random cases use, in the order of their ids.
inline std::vector<ItemKind> items()
{
    std::vector<ItemKind> all = samples::items();
    ItemKind tape = kind("tape", Source::Home, {});
    tape.allergens = {"adhesive", "latex"};
    ItemKind tin = kind("tin", Source::Home, {Tag::Edge, Tag::Trace});
    tin.hazards.sealsAFace = true;
    for (const ItemKind &more :
         {tape, tin, kind("pouch", Source::Box, {}), kind("rband", Source::Box, {Tag::Band}),
          kind("springscissors", Source::Box, {Tag::Sharp}),
          kind("straw", Source::Box, {Tag::Straw, Tag::Hyg}),
          kind("water", Source::Home, {Tag::Water})})
        all.push_back(more);
    std::sort(all.begin(), all.end(),
              [](const ItemKind &a, const ItemKind &b) { return a.id < b.id; });
    return all;
}

/// The swaps of activities.md 1.3, and one that makes things worse.
inline const std::vector<std::pair<std::string, std::string>> swaps{
    {"ball", "pouch"},     {"balloon", "scarf"},  {"bands", "loops"},
    {"coins", "lids"},     {"crayons", "chunky"}, {"dough", "ricedough"},
    {"eyes", "lids"},      {"pegs", "onepegs"},   {"rband", "towel"},
    {"eyes", "chunky"},    {"lids", "coins"},     {"scissors", "springscissors"},
    {"paper", "scissors"}, {"scarf", "pouch"},    {"tin", "lids"}};

inline Answer anAnswer(int unansweredPercent)
{
    if (chance(unansweredPercent))
        return Answer::Unanswered;
    return chance(25) ? Answer::Yes : Answer::No;
}

/// The ages at which some rule begins, a month around them, and any other.
inline int months()
{
    const int edge = oneOf<int>({18, 24, 30, 36, 48, 60, 72, 96, 120});
    return chance(60) ? edge + between(-1, 2) : between(-1, 132);
}

inline void addPeople(GateWorld &world)
{
    if (chance(50))
        world.addChild("child", chance(80) ? std::optional(months()) : std::nullopt, anAnswer(50))
            .pica = chance(10);
    for (int i = between(0, 3); i > 0; --i) {
        child::Person &person =
            world.addChild("p" + std::to_string(i),
                           chance(85) ? std::optional(months()) : std::nullopt, anAnswer(40));
        person.pica = chance(5);
        person.visits = chance(30);
        person.kind = chance(20) ? child::PersonKind::Adult : child::PersonKind::Child;
    }
}

inline void setHome(GateWorld &world)
{
    child::HomeSheet &home = world.home;
    world.hasHome = chance(93);
    home.avoidances = {anAnswer(4), anAnswer(4), anAnswer(4), anAnswer(20), {}};
    home.avoidances.latexRisk = chance(5) ? Answer::Yes : Answer::No;
    if (chance(80))
        home.avoidances.more["adhesive"] = anAnswer(10);
    home.highStorage = chance(80);
    if (chance(70))
        home.permissions.smallWhenAway = "asleep or out";
    if (chance(30))
        home.permissions.floors[{"sample"}] = {months(), between(1, 4)};
    home.likesTouch = anAnswer(30);
    home.reviewedOnly = chance(10);
    for (bool *flag : {&home.flags.seizureShuntOrNeck, &home.flags.heartLungOrShunt,
                       &home.flags.jointOrHeart, &home.flags.mouthOrSwallowing,
                       &home.flags.brokenSkin, &home.flags.avoidScent, &home.flags.soundSensitive})
        *flag = chance(12);
    for (bool *yes : {&home.permissions.spin, &home.permissions.breath, &home.permissions.lift,
                      &home.permissions.straw})
        *yes = chance(30);
    for (const char *extra : {"coins", "lids", "paper", "towel", "water", "yoghurt"}) {
        if (chance(8))
            home.missingExtras.push_back({extra});
    }
}

inline void setRoom(GateWorld &world)
{
    safety::Room &room = world.room;
    if (chance(75)) {
        room.present.emplace();
        for (const child::Person &person : world.home.people) {
            if (chance(40))
                room.present->push_back(person.id);
        }
        if (chance(3))
            room.present->push_back({"nobody-knows"});
    }
    room.visitorUnderThree = chance(8);
    room.visitorMouther = chance(8);
    room.adultCanBe = oneOf<Supervision>(
        {Supervision::Beside, Supervision::Beside, Supervision::Reach, Supervision::Near});
    room.besideSaid = chance(30);
    room.quietNow = chance(10);
}

inline void setBox(GateWorld &world)
{
    safety::BoxState &box = world.box;
    box.here = chance(93);
    box.floorNoteOpen = chance(15);
    box.balloonNoteOpen = chance(10);
    for (auto stock = box.items.begin(); stock != box.items.end();) {
        stock->second = {chance(75) ? 8 : between(0, 6), chance(6), chance(4)};
        stock = chance(15) ? box.items.erase(stock) : std::next(stock);
    }
}

inline GateWorld aWorld()
{
    static const std::vector<ItemKind> kinds = items();
    GateWorld world(kinds);
    world.isMonthsOld(months());
    if (chance(5))
        world.child.age = std::nullopt;
    addPeople(world);
    setHome(world);
    setRoom(world);
    setBox(world);
    return world;
}

inline void addItems(Activity &activity, const GateWorld &world)
{
    for (int i = between(0, 4); i > 0; --i) {
        const ItemKind item = oneOf(world.catalogue.items());
        ItemUse use;
        use.item = chance(1) ? ItemId{"buttons"} : item.id;
        use.source = item.source;
        if (item.id.value == "paper" && chance(30))
            activity.madeTags.add(Tag::Small);
        use.quantity = between(1, 5);
        use.role = chance(75) ? Role::Must : chance(70) ? Role::Nice : Role::InsteadOf;
        const auto same = [&use](const ItemUse &other) { return other.item == use.item; };
        if (std::any_of(activity.items.begin(), activity.items.end(), same))
            continue;
        activity.items.push_back(use);
        // A sound entry lists the tags of its items; the gate must not rely on it.
        if (chance(85))
            activity.cautions = activity.cautions | item.tags;
    }
    for (const auto &[item, with] : swaps) {
        const auto used = [&item = item](const ItemUse &use) { return use.item.value == item; };
        if (std::any_of(activity.items.begin(), activity.items.end(), used) && chance(70) &&
            activity.swaps.size() < 6)
            activity.swaps.push_back({{item},
                                      {with},
                                      chance(10) ? TagSet{Tag::Trip, Tag::Foil} : TagSet{},
                                      chance(10) ? 60 : 0,
                                      "In another way."});
    }
}

inline Activity anActivity(const GateWorld &world)
{
    Activity activity;
    activity.id = {"sample"};
    activity.skillsMain = {Skill::Pin};
    activity.version = between(1, 4);
    activity.status = chance(90) ? (chance(50) ? Status::Reviewed : Status::AwaitingReview)
                                 : (chance(50) ? Status::Draft : Status::Withdrawn);
    activity.ageFloorMonths = oneOf<int>({12, 18, 18, 18, 19, 24, 36, 48, 60, 72});
    activity.supervision =
        oneOf<Supervision>({Supervision::Near, Supervision::Reach, Supervision::Beside});
    for (int i = between(0, 3); i > 0; --i)
        activity.cautions.add(static_cast<Tag>(between<int>(0, tagCount)));
    addItems(activity, world);
    return activity;
}

} // namespace drawn
