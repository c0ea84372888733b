#pragma once

#include "gate_oracle.h"

/// The gate and the second reading of the rules, side by side.
namespace comparison {

using namespace lidlark;

/// How many cases of each sort were seen, so that none of them is judged in theory only.
struct Tally {
    int admitted = 0;
    int swapped = 0;
    int refused = 0;

    [[nodiscard]] int all() const { return admitted + swapped + refused; }
    void add(const Tally &other)
    {
        admitted += other.admitted;
        swapped += other.swapped;
        refused += other.refused;
    }
};

inline const char *disagreementOver(const safety::Admitted &form, const GateWorld &world,
                                    const oracle::Judge &judge)
{
    if (!judge.allowsWith(form.swaps()))
        return "unsafe: the gate lets through what the second reading forbids";
    if (oracle::tagsOf(form.cautions()) != judge.tagsWith(form.swaps()))
        return "the cautions differ";
    if (form.supervision() != judge.supervisionWith(form.swaps()))
        return "the supervision differs";
    for (const catalogue::ItemUse &use : form.items()) {
        if (use.source != catalogue::Source::Box)
            continue;
        const auto stock = world.box.items.find(use.item);
        if (!world.box.here || stock == world.box.items.end() || stock->second.low < use.quantity)
            return "a thing that is not there is to be used";
    }
    return nullptr;
}

/// @returns what the two disagree about, in words; null: nothing.
inline const char *disagreement(const GateWorld &world, const catalogue::Activity &activity,
                                Tally &tally)
{
    const safety::Admission admission = world.judge(activity);
    const oracle::Judge judge(world, activity);
    if (const auto *form = std::get_if<safety::Admitted>(&admission)) {
        ++(form->swaps().empty() ? tally.admitted : tally.swapped);
        return disagreementOver(*form, world, judge);
    }
    ++tally.refused;
    if (judge.allows())
        return "over-hiding: the gate refuses what the second reading allows";
    return std::get<safety::Refusal>(admission).empty() ? "refused for no reason" : nullptr;
}

} // namespace comparison
