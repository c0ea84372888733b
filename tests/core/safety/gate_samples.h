#pragma once

#include "gate_world.h"

#include <QString>

#include <algorithm>

/// Small entries for the tests of the gate. Items and their tags are those of activities.md 1.3.
namespace samples {

using namespace lidlark;
using namespace lidlark::catalogue;
using namespace lidlark::safety;
using child::Answer;

inline ItemKind kind(const std::string &id, Source source, TagSet tags)
{
    ItemKind item;
    item.id = {id};
    item.name = id;
    item.source = source;
    item.tags = tags;
    return item;
}

/// The items of activities.md 1.3 that these tests use, in the order of their ids.
inline std::vector<ItemKind> items()
{
    std::vector<ItemKind> all{
        kind("ball", Source::Box, {Tag::Latex}),
        kind("balloon", Source::Box, {Tag::Balloon, Tag::Latex}),
        kind("bands", Source::Box, {Tag::Elastic, Tag::Latex}),
        kind("chunky", Source::Box, {}),
        kind("coins", Source::Home, {Tag::Coin, Tag::Small}),
        kind("crayons", Source::Box, {Tag::Small}),
        kind("dough", Source::Box, {Tag::Dough, Tag::Wheat, Tag::Pet, Tag::Hyg}),
        kind("eyes", Source::Box, {Tag::Small}),
        kind("lids", Source::Home, {}),
        kind("loops", Source::Box, {Tag::Elastic}),
        kind("onepegs", Source::Box, {Tag::Pinch}),
        kind("paper", Source::Home, {Tag::Paper}),
        kind("pegs", Source::Box, {Tag::Pinch, Tag::Small}),
        kind("pieces", Source::Box, {Tag::Small}),
        kind("ricedough", Source::Box, {Tag::Dough, Tag::Pet, Tag::Hyg}),
        kind("scarf", Source::Box, {Tag::Face}),
        kind("scissors", Source::Box, {Tag::Sharp}),
        kind("towel", Source::Home, {Tag::Face}),
        kind("yoghurt", Source::Home, {Tag::Hyg})};
    all.back().allergens = {"milk"};
    all[1].comesBack = ComesBack::UsedUp;
    all[6].comesBack = ComesBack::PartUsed;
    all[14].comesBack = ComesBack::PartUsed;
    return all;
}

inline Activity activityWith(TagSet cautions)
{
    Activity activity;
    activity.id = {"sample"};
    activity.status = Status::Reviewed;
    activity.ageFloorMonths = 18;
    activity.supervision = Supervision::Near;
    activity.skillsMain = {Skill::Pin};
    activity.cautions = cautions;
    return activity;
}

inline void use(Activity &activity, const std::string &item, int quantity, Role role = Role::Must)
{
    const auto all = items();
    const auto found = std::find_if(all.begin(), all.end(),
                                    [&item](const ItemKind &k) { return k.id.value == item; });
    ItemUse line;
    line.item = {item};
    line.quantity = quantity;
    line.role = role;
    line.source = found == all.end() ? Source::Box : found->source;
    line.fate = found != all.end() && found->comesBack == ComesBack::UsedUp ? Fate::UsedUp
                                                                            : Fate::ComesBack;
    line.countBack = line.fate == Fate::UsedUp ? 0 : quantity;
    activity.items.push_back(line);
    if (found != all.end() && item != "towel")
        activity.cautions = activity.cautions | found->tags;
}

inline void allowSwap(Activity &activity, const std::string &item, const std::string &with)
{
    activity.swaps.push_back({{item}, {with}, {}, 0, "The same with something else."});
}

inline bool isAdmitted(const Admission &admission)
{
    return std::holds_alternative<Admitted>(admission);
}

inline const Admitted &form(const Admission &admission)
{
    return std::get<Admitted>(admission);
}

inline QString written(Tag tag)
{
    const std::string_view name = tagNames.of(tag);
    return QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
}

inline Tag tagNamed(const QString &name)
{
    return *tagNames.parse(name.toStdString());
}

inline bool refusedFor(const Admission &admission, ReasonCode code)
{
    const auto *refusal = std::get_if<Refusal>(&admission);
    return refusal && std::any_of(refusal->begin(), refusal->end(),
                                  [code](const Reason &r) { return r.code == code; });
}

inline bool refusedWith(const Admission &admission, const Reason &reason)
{
    const auto *refusal = std::get_if<Refusal>(&admission);
    return refusal && std::find(refusal->begin(), refusal->end(), reason) != refusal->end();
}

} // namespace samples
