#include "core/wording/help_words.h"

#include <algorithm>
#include <array>
#include <optional>

namespace lidlark::wording {

namespace {

using safety::ReasonCode;

/// What somebody could do about a reason.
enum class Help { WhoIsHere, SitCloser, BoxHere, LookOver, FillUp, AnswerQuestions, Louder };
constexpr std::size_t helpCount = 7;

std::optional<Help> helpFor(ReasonCode code)
{
    switch (code) {
    case ReasonCode::UnderThreeInRoom:
    case ReasonCode::MoutherInRoom:
        return Help::WhoIsHere;
    case ReasonCode::NeedsCloserAdult:
    case ReasonCode::WaterUnderThree:
        return Help::SitCloser;
    case ReasonCode::BoxElsewhere:
        return Help::BoxHere;
    case ReasonCode::FloorNoteOpen:
        return Help::LookOver;
    case ReasonCode::ItemUsedUp:
    case ReasonCode::ItemPastDate:
        return Help::FillUp;
    case ReasonCode::AgeUnknown:
    case ReasonCode::AllergyUnanswered:
        return Help::AnswerQuestions;
    case ReasonCode::QuietNow:
        return Help::Louder;
    default:
        return std::nullopt;
    }
}

/// The one help that would free an entry by itself.
std::optional<Help> onlyHelpFor(const safety::HeldBack &held)
{
    const std::optional<Help> first =
        held.reasons.empty() ? std::nullopt : helpFor(held.reasons.front().code);
    const bool all =
        std::all_of(held.reasons.begin(), held.reasons.end(), [&](const safety::Reason &reason) {
            return first && helpFor(reason.code) == first;
        });
    return all ? first : std::nullopt;
}

/// The help that frees most entries.
std::optional<Help> mostHelpful(const safety::Gated &gated)
{
    std::array<int, helpCount> frees{};
    for (const safety::HeldBack &held : gated.heldBack) {
        if (const auto help = onlyHelpFor(held))
            ++frees[static_cast<std::size_t>(*help)];
    }
    const auto *most = std::max_element(frees.begin(), frees.end());
    if (*most == 0)
        return std::nullopt;
    return static_cast<Help>(most - frees.begin());
}

Sentence sentenceFor(Help help)
{
    switch (help) {
    case Help::WhoIsHere:
        return {say("More fits with fewer small children in the room. Tap the names to say who is "
                    "here."),
                {}};
    case Help::SitCloser:
        return {say("More fits when you can sit right beside. Tap the names to say so."), {}};
    case Help::BoxHere:
        return {say("More fits when the box is here."), {}};
    case Help::LookOver:
        return {say("More fits when the floor has been looked over."), {}};
    case Help::FillUp:
        return {say("More fits when the box is filled up again."), {}};
    case Help::AnswerQuestions:
        return {say("More fits when the open questions on the home sheet are answered."), {}};
    case Help::Louder:
        break;
    }
    return {say("More fits when it need not be quiet."), {}};
}

bool anyOn(const rotation::Filters &filters)
{
    return filters.noTable || filters.noMess || filters.quiet || filters.oneHand ||
           filters.tiredAdult || filters.awayFromHome || filters.someoneIsIll;
}

} // namespace

Sentence whatWouldHelp(const safety::Gated &gated, const rotation::Filters &filters,
                       bool minutesAreShort)
{
    if (anyOn(filters))
        return {say("Take one of the words below off, and more fits."), {}};
    if (minutesAreShort)
        return {say("With a few minutes more, more fits."), {}};
    if (const auto help = mostHelpful(gated))
        return sentenceFor(*help);
    return {say("Everything shows all there is, and what each one needs."), {}};
}

} // namespace lidlark::wording
