#include "core/wording/pack_words.h"

#include <algorithm>
#include <array>

namespace lidlark::wording {

namespace {

using workbench::CallKind;
using workbench::CallOut;
using workbench::LineState;
using workbench::NotReady;

Argument packedName(const ItemId &item, const ItemNames &names)
{
    return withCapital(names(item));
}

Sentence avoidsWords(child::Avoided what)
{
    return {what == child::Avoided::Latex ? say("No latex in this box.")
                                          : say("No wheat in this box."),
            {}};
}

Sentence plainCall(const CallOut &call, const ItemNames &names)
{
    switch (call.kind) {
    case CallKind::LeftHand:
        return {say("Left-handed scissors only."), {}};
    case CallKind::Avoids:
        return avoidsWords(call.avoided);
    case CallKind::Swapped:
        return {say("%1, not %2."), {packedName(call.item, names), names(call.insteadOf)}};
    case CallKind::LeftOut:
        return {say("No %1 in this box."), {names(call.item)}};
    case CallKind::OtherCount:
        return {say("%1: %2 here, not %3."),
                {packedName(call.item, names), inDigits(call.pieces), inDigits(call.usual)}};
    case CallKind::Added:
        break;
    }
    return {say("%1 too: %2."), {packedName(call.item, names), inDigits(call.pieces)}};
}

} // namespace

Sentence whyDiffers(const workbench::Departure &because)
{
    // In the order of workbench::Why.
    static constexpr std::array words{say("For the hand."),
                                      say("For an allergy."),
                                      say("For this home."),
                                      say("For a goal."),
                                      say("Because somebody puts things in the mouth."),
                                      say("For the age.")};
    const Sentence why{words[static_cast<std::size_t>(because.why)], {}};
    return because.words.empty() ? why : Sentence{say("%1 Noted: %2"), {why, because.words}};
}

Sentence callOutWords(const CallOut &call, const ItemNames &names)
{
    const Sentence plain = plainCall(call, names);
    return call.because ? Sentence{say("%1 Why: %2"), {plain, whyDiffers(*call.because)}} : plain;
}

std::vector<CalledLine> callOutLines(std::span<const CallOut> calls, const ItemNames &names)
{
    std::vector<CalledLine> lines;
    std::vector<workbench::Departure> told; // reasons, each with the things that share it
    const auto shares = [](const CallOut &call, const workbench::Departure &why) {
        return call.because && call.because->why == why.why && call.because->words == why.words;
    };
    for (const CallOut &call : calls) {
        if (!call.because) {
            lines.push_back({plainCall(call, names), call.kind == CallKind::Avoids});
            continue;
        }
        const workbench::Departure &why = *call.because;
        if (std::ranges::any_of(told, [&](const auto &before) { return shares(call, before); }))
            continue;
        told.push_back(why);
        const auto sharing = [&](const CallOut &other) { return shares(other, why); };
        if (std::ranges::count_if(calls, sharing) == 1) {
            lines.push_back({callOutWords(call, names)});
            continue;
        }
        lines.push_back({whyDiffers(why)});
        for (const CallOut &other : calls) {
            if (sharing(other))
                lines.push_back({plainCall(other, names)});
        }
    }
    return lines;
}

Sentence readyWords(const workbench::PackBox &box)
{
    const auto lines = static_cast<int>(box.lines.size());
    switch (box.notReady) {
    case NotReady::Nothing:
        return {say("Ready."), {}};
    case NotReady::Conflict:
        return {say("It must not be packed as it is written. Change its list first."), {}};
    case NotReady::Disputed:
        return {say("Two people have changed this box. Look at its list and keep it again."), {}};
    case NotReady::TakeOut:
        return {say("Something has to come out again."), {}};
    case NotReady::Lines:
        return {say("%1 of %2 in."), {inDigits(box.linesIn()), inDigits(lines)}};
    case NotReady::SecondLook:
        break;
    }
    return {say("All in. A second person looks it over: %1 of %2."),
            {inDigits(box.linesLookedOver()), inDigits(lines)}};
}

Sentence lineWords(const workbench::PackLine &line)
{
    switch (line.state) {
    case LineState::Open:
        break;
    case LineState::WrongHand:
        return {say("These are for the other hand. Put them back."), {}};
    case LineState::WrongCount:
        return {say("Another number was packed. Count it again."), {}};
    case LineState::Packed:
        return {say("In, says %1."), {line.packed.front().who}};
    case LineState::LookedOver:
        return {say("In, says %1. Looked over by %2."), {line.packed.front().who, line.lookedBy}};
    }
    return {};
}

Sentence perhapsTwiceWords()
{
    return {say("Two people packed this. See that it is not in twice."), {}};
}

Sentence otherHandWords(const std::string &code, workbench::Hand wanted)
{
    return {wanted == workbench::Hand::Left
                ? say("%1 needs the pair for the left hand. Put these back.")
                : say("%1 needs the pair for the right hand. Put these back."),
            {code}};
}

} // namespace lidlark::wording
