#include "core/wording/why_words.h"

#include "core/wording/line_words.h"
#include "core/wording/skill_words.h"
#include "core/wording/tag_words.h"

#include <algorithm>
#include <array>
#include <optional>
#include <span>

namespace lidlark::wording {

namespace {

using catalogue::Tag;
using rotation::WhyCode;

constexpr English newWords = say("New. %1");

/// A caution an adult wants to know of before choosing something new.
std::optional<Tag> newWith(catalogue::TagSet cautions)
{
    static constexpr std::array worthSaying{Tag::Balloon, Tag::Small,   Tag::Coin, Tag::Cord,
                                            Tag::Straw,   Tag::Elastic, Tag::Band, Tag::Sharp,
                                            Tag::Water,   Tag::Foam};
    const auto *found = std::find_if(worthSaying.begin(), worthSaying.end(),
                                     [&](Tag tag) { return cautions.has(tag); });
    return found == worthSaying.end() ? std::nullopt : std::optional(*found);
}

Sentence newOne(const rotation::Offer &offer)
{
    const auto caution = newWith(offer.admitted.cautions());
    return caution ? Sentence{newWords, {Sentence{tagShort(*caution), {}}}}
                   : Sentence{say("Something new"), {}};
}

Sentence checkIn(WhyCode code)
{
    switch (code) {
    case WhyCode::CheckinResting:
        return {say("For a resting kite"), {}};
    case WhyCode::CheckinSteady:
        return {say("For a steady kite"), {}};
    case WhyCode::CheckinWhirling:
        return {say("For a tugging kite"), {}};
    default:
        return {say("Easy to start with"), {}};
    }
}

Sentence lineFor(const rotation::Offer &offer, WhyCode code)
{
    switch (code) {
    case WhyCode::Goal:
        return offer.goal.empty() ? Sentence{say("For one of your goals"), {}}
                                  : Sentence{say("For %1"), {offer.goal}};
    case WhyCode::KnownFriend:
        return {say("Known from before"), {}};
    case WhyCode::New:
        return newOne(offer);
    case WhyCode::Freshness:
        return {say("Not for a while"), {}};
    case WhyCode::UseSoon:
        return offer.admitted.cautions().has(Tag::Dough) ? Sentence{say("Use the dough soon"), {}}
                                                         : Sentence{say("Use some of it soon"), {}};
    case WhyCode::CheckinResting:
        return checkIn(WhyCode::CheckinResting);
    case WhyCode::CheckinSteady:
        return checkIn(WhyCode::CheckinSteady);
    case WhyCode::CheckinWhirling:
        return checkIn(WhyCode::CheckinWhirling);
    case WhyCode::CheckinClouds:
        return checkIn(WhyCode::CheckinClouds);
    case WhyCode::Coverage:
        return offer.coverageSkill
                   ? Sentence{say("For a change: %1"), {skillWords(*offer.coverageSkill)}}
                   : Sentence{say("Something different this week"), {}};
    case WhyCode::Waiting:
        return {say("Has waited its turn"), {}};
    case WhyCode::NoTable:
        return {say("Needs no table"), {}};
    case WhyCode::Quiet:
        return {say("Quiet"), {}};
    case WhyCode::AllHere:
        break;
    }
    return {say("All it needs is here"), {}};
}

bool isSaid(const Sentence &sentence, std::span<const WhyLine> said)
{
    return std::ranges::any_of(said, [&](const WhyLine &line) {
        return std::ranges::find(line.parts, sentence) != line.parts.end();
    });
}

/// The strongest reason that no line above has given; what it practises, where all have been.
Sentence unsaidReason(const rotation::Offer &offer, std::span<const WhyLine> said)
{
    for (const WhyCode code : offer.why) {
        Sentence line = lineFor(offer, code);
        if (!isSaid(line, said))
            return line;
    }
    const catalogue::Skill family = offer.admitted.activity().family();
    return {say("Practises %1"), {skillWords(family)}};
}

/// Beside a goal there is room for what is practised alone.
Sentence shortened(const Sentence &reason)
{
    const bool namesSkill = !reason.arguments.empty() && reason.english != newWords;
    return namesSkill ? Sentence{say("%1"), {withCapital(reason.arguments.front())}} : reason;
}

WhyLine whyLine(const rotation::Offer &offer, std::span<const WhyLine> said)
{
    const Sentence reason = unsaidReason(offer, said);
    const bool forGoal = std::ranges::find(offer.why, WhyCode::Goal) != offer.why.end();
    const Sentence goal = lineFor(offer, WhyCode::Goal);
    if (!forGoal || reason == goal)
        return {{reason}};
    return {{shortened(reason), goal}};
}

} // namespace

std::vector<WhyLine> whyLines(std::span<const rotation::Offer> offers)
{
    std::vector<WhyLine> lines;
    lines.reserve(offers.size());
    for (const rotation::Offer &offer : offers)
        lines.push_back(whyLine(offer, lines));
    return lines;
}

Sentence sentenceFor(const WhyLine &line)
{
    return inOneLine({line.parts.begin(), line.parts.end()});
}

Sentence sentenceFor(rotation::SideCondition condition)
{
    using rotation::SideCondition;
    switch (condition) {
    case SideCondition::OneNew:
        return {say("More than one of these is new here."), {}};
    case SideCondition::KnownFriend:
        return {say("None of these is an old favourite yet."), {}};
    case SideCondition::WithoutTable:
        return {say("All of these need a table."), {}};
    case SideCondition::Family:
        return {say("Some of these practise the same thing."), {}};
    case SideCondition::OneMess:
        break;
    }
    return {say("More than one of these makes a mess."), {}};
}

} // namespace lidlark::wording
