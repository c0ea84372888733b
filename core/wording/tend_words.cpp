#include "core/wording/tend_words.h"

#include "core/wording/day_words.h"
#include "core/wording/print_words.h"

#include <array>
#include <utility>

namespace lidlark::wording {

namespace {

using workbench::Care;
using workbench::Standing;

/// Nothing: none of them is left to do.
std::optional<Sentence> namesOf(const std::vector<workbench::StillToDo> &left, Care care,
                                const ItemNames &names)
{
    std::vector<Argument> list;
    for (const workbench::StillToDo &one : left) {
        if (one.care == care)
            list.push_back(names(one.item));
    }
    return list.empty() ? std::nullopt : std::optional(inList(std::move(list)));
}

} // namespace

Sentence standingWords(const workbench::BoxStatus &status, Day today)
{
    const Sentence day = dayWords(status.day, today);
    switch (status.standing) {
    case Standing::New:
        return {say("Not handed over yet."), {}};
    case Standing::Issued:
        return {say("With %1. Handed over %2."), {status.child, day}};
    case Standing::Returned:
        return {say("Came back from %1: %2."), {status.child, day}};
    case Standing::Retired:
        break;
    }
    return {say("Used no more: %1."), {day}};
}

std::optional<Sentence> firstTend(const std::vector<workbench::StillToDo> &left,
                                  const ItemNames &names)
{
    const auto clean = namesOf(left, Care::Clean, names);
    const auto replace = namesOf(left, Care::Replace, names);
    if (!clean && !replace)
        return std::nullopt;
    if (!replace)
        return Sentence{say("Before another child has it, clean: %1."), {*clean}};
    if (!clean)
        return Sentence{say("Before another child has it, replace: %1."), {*replace}};
    return Sentence{say("Before another child has it, clean: %1. Replace: %2."),
                    {*clean, *replace}};
}

Sentence careWord(Care care)
{
    return {care == Care::Clean ? say("Clean") : say("Replace"), {}};
}

Sentence cleanedHowWords(workbench::CleanedHow how)
{
    // In the order of workbench::CleanedHow.
    static constexpr std::array words{say("Soap and water"), say("Wiped"), say("Washing machine")};
    return {words[static_cast<std::size_t>(how)], {}};
}

Sentence tendedWords(const workbench::Tended &tended, Day today)
{
    const Sentence what =
        tended.replaced ? Sentence{say("Replaced"), {}} : cleanedHowWords(tended.how);
    return {say("%1. %2, %3."), {what, tended.by, dayWords(tended.day, today)}};
}

Sentence recallWords(int boxes, const std::string &lot)
{
    if (boxes == 0)
        return {say("No box holds lot %1, as far as lots were written down."), {lot}};
    return {say("Boxes with lot %1: %2. Ask for each of them back, or for the thing."),
            {lot, inDigits(boxes)}};
}

Sentence recallPlace(Standing standing, const std::string &whose, Day since, Day today)
{
    switch (standing) {
    case Standing::Issued:
        return {say("With %1. Handed over %2."), {whose, dayWords(since, today)}};
    case Standing::Returned:
        return {say("Came back from %1: %2."), {whose, dayWords(since, today)}};
    case Standing::New:
    case Standing::Retired:
        break;
    }
    return whose.empty() ? Sentence{say("Packed, and nobody's yet."), {}}
                         : Sentence{say("Packed for %1, not handed over yet."), {whose}};
}

} // namespace lidlark::wording
