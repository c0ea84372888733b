#include "core/wording/noted_home_words.h"

#include "core/child/home_facts.h"
#include "core/journal/fields.h"
#include "core/play/grading_events.h"
#include "core/play/plan_events.h"
#include "core/play/play_events.h"
#include "core/wording/day_words.h"
#include "core/wording/fact_words.h"

#include <array>

namespace lidlark::wording {

namespace {

using journal::Event;
using journal::Fields;
using journal::Kind;

Sentence endedWords(const std::string &activity, const Fields &fields)
{
    // In the order of play::Ending.
    static constexpr std::array lines{say("%1: all back"), say("%1: put back, not all as it was"),
                                      say("%1: stopped early")};
    const auto ending = play::endingNames.parse(fields.text("ending").value_or(""));
    return {lines[static_cast<std::size_t>(ending.value_or(play::Ending::AllBack))], {activity}};
}

Sentence reactionWords(const std::string &activity, const Fields &fields)
{
    // In the order of play::Phrase.
    static constexpr std::array lines{say("%1: asked for it again"), say("%1: needed help"),
                                      say("%1: found own way")};
    const auto phrase = play::phraseNames.parse(fields.text("phrase").value_or(""));
    return {lines[static_cast<std::size_t>(phrase.value_or(play::Phrase::AskedAgain))], {activity}};
}

Sentence gradingWords(const std::string &activity, const Fields &fields)
{
    // In the order of play::Way.
    static constexpr std::array lines{say("%1: played as written"), say("%1: played easier"),
                                      say("%1: played harder")};
    const auto way = play::wayNames.parse(fields.text("way").value_or(""));
    return {lines[static_cast<std::size_t>(way.value_or(play::Way::AsWritten))], {activity}};
}

Sentence plannedWords(const std::string &activity, const Fields &fields)
{
    const auto day = dayFromText(fields.text("day").value_or(""));
    const auto wish = play::wishNames.parse(fields.text("wish").value_or(""));
    const Argument weekday = day ? Argument(weekdayWord(*day)) : Argument(std::string());
    if (wish == play::Wish::Keep)
        return {say("%1: kept for %2"), {activity, weekday}};
    if (wish == play::Wish::Free)
        return {say("%1: left free"), {weekday}};
    return {say("%1: open again"), {weekday}};
}

Sentence noteWords(const Fields &fields)
{
    if (fields.isTrue("removed"))
        return {say("A note of your own taken off"), {}};
    return {say("A note of your own kept"), {}};
}

} // namespace

std::vector<Sentence> notedOfHome(const Event &event, const NotedAbout &about)
{
    const catalogue::Activity *known = about.catalogue.activity(about.activity);
    const std::string activity = known != nullptr ? known->name : about.activity.value;
    const Fields fields(event.fields);
    switch (event.kind) {
    case Kind::Fact:
        if (const auto fact = child::readFact(event))
            return {factSaid(*fact, about.person)};
        return {};
    case Kind::PlayStarted:
        return {{say("%1: begun"), {activity}}};
    case Kind::PlayEnded:
        return {endedWords(activity, fields)};
    case Kind::Reaction:
        return {reactionWords(activity, fields)};
    case Kind::Grading:
        return {gradingWords(activity, fields)};
    case Kind::Planned:
        return {plannedWords(activity, fields)};
    case Kind::OurWay:
        if (fields.text("words").value_or("").empty())
            return {{say("%1: our way taken off"), {activity}}};
        return {{say("%1: our way kept"), {activity}}};
    case Kind::Sharing:
        if (fields.isTrue("yes"))
            return {{say("What is played: shared with the therapist"), {}}};
        return {{say("What is played: not shared"), {}}};
    case Kind::Note:
        return {noteWords(fields)};
    case Kind::NoteSent:
        return {{say("A note of your own may go to the therapist"), {}}};
    default:
        return {};
    }
}

} // namespace lidlark::wording
