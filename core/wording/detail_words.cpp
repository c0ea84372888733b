#include "core/wording/detail_words.h"

#include <array>
#include <optional>
#include <string_view>

namespace lidlark::wording {

namespace {

constexpr std::string_view place = "%1";

/// As core/usecase and core/child write them. The first that fits holds: a longer one stands before
/// the one it contains.
constexpr std::array details{say("this play"),
                             say("the box of this play"),
                             say("this question"),
                             say("an activity"),
                             say("another activity"),
                             say("the activity %1"),
                             say("a box for %1"),
                             say("a request for %1"),
                             say("a counting in of %1"),
                             say("this piece of %1"),
                             say("any %1 in this box"),
                             say("%1 in this box"),
                             say("%1: empty"),
                             say("%1: too long"),
                             say("%1: below zero"),
                             say("%1: at least one"),
                             say("%1: more than 999"),
                             say("%1: more than the box held"),
                             say("%1: not missing"),
                             say("%1: more than is missing, or none"),
                             say("%1: some pieces are still missing"),
                             say("%1: more than are out, or none"),
                             say("%1: cannot be washed"),
                             say("%1: need not leave the house"),
                             say("poison line: only digits, spaces, + and -, at most 20"),
                             say("emergency number: only digits, spaces, + and -, at most 20"),
                             say("%1: still to come"),
                             say("%1: the same as another step"),
                             say("%1: none of the five steps"),
                             say("%1: not after the day it was agreed"),
                             say("%1: one line of plain text only"),
                             say("day: before the goal was agreed"),
                             say("goal: it has ended"),
                             say("goal: it has not ended"),
                             say("weight: 0 to 9"),
                             say("this goal"),
                             say("these words of the goal"),
                             say("%1: something is there already"),
                             say("found: nothing named"),
                             say("day: more than 31 days ago"),
                             say("day: before it came into the box"),
                             say("days: 1 to 365"),
                             say("day: today to a week ahead"),
                             say("week: only this home's own phones plan it"),
                             say("grading: only the therapist pins one"),
                             say("mouths: pica stands as yes; say no to that first"),
                             say("kind: an adult, but born less than 18 years ago"),
                             say("this box"),
                             say("this build"),
                             say("a build"),
                             say("this design"),
                             say("day: before it came back"),
                             say("%1 to be cleaned or replaced first"),
                             say("%1: is replaced, not cleaned"),
                             say("%1: made for the other hand"),
                             say("%1: say for which hand"),
                             say("%1: holds what this home must avoid"),
                             say("%1: nobody has said what it holds"),
                             say("%1: say why it differs"),
                             say("%1: is for that child already"),
                             say("boxes: none yet"),
                             say("bought: all of it"),
                             say("currency: three capital letters"),
                             say("spares: 0 to 100 percent"),
                             say("%1: nothing in it"),
                             say("%1: named twice"),
                             say("%1: not packed"),
                             say("%1: somebody else looks it over"),
                             say("%1: still with a child"),
                             say("%1: used no more"),
                             say("%1: has not come back"),
                             say("%1: is not with a child"),
                             say("%1: was handed over as this build"),
                             say("%1: written in two ways"),
                             say("%1: something has to come out first"),
                             say("%1: not all of it is packed"),
                             say("%1: a second person looks it over first"),
                             say("%1: nobody's yet"),
                             say("a lid list"),
                             say("contact: one line only"),
                             say("contact: at most 60 characters"),
                             say("contact: not plain text"),
                             say("code: another clinic's"),
                             say("role: only who packs comes into the clinic")};

/// What stands in the place of %1; nothing where the words do not fit.
std::optional<std::string_view> fitted(std::string_view words, std::string_view detail)
{
    const std::size_t at = words.find(place);
    if (at == std::string_view::npos)
        return words == detail ? std::optional(std::string_view()) : std::nullopt;
    const std::string_view before = words.substr(0, at);
    const std::string_view after = words.substr(at + place.size());
    if (detail.size() <= before.size() + after.size() || !detail.starts_with(before) ||
        !detail.ends_with(after))
        return std::nullopt;
    return detail.substr(at, detail.size() - before.size() - after.size());
}

/// "K2: eyes" as "K2: stick-on eyes".
std::string named(std::string_view what, const catalogue::Catalogue &names)
{
    for (const std::string_view between : {": ", ", "}) {
        if (const std::size_t at = what.find(between); at != std::string_view::npos)
            return named(what.substr(0, at), names) + std::string(between) +
                   named(what.substr(at + between.size()), names);
    }
    const std::string id(what);
    if (const catalogue::ItemKind *item = names.item({id}))
        return item->name;
    const catalogue::Activity *activity = names.activity({id});
    return activity != nullptr ? activity->name : id;
}

} // namespace

Argument detailWords(const std::string &detail, const catalogue::Catalogue *names)
{
    for (const English &words : details) {
        const auto inside = fitted(words.text(), detail);
        if (!inside)
            continue;
        if (inside->empty())
            return Sentence{words, {}};
        return Sentence{words, {names ? named(*inside, *names) : std::string(*inside)}};
    }
    return detail;
}

} // namespace lidlark::wording
