#include "core/play/play_events.h"

#include "core/journal/fields.h"
#include "core/journal/latest.h"

#include <algorithm>
#include <iterator>
#include <set>

namespace lidlark::play {

using journal::Event;
using journal::Fields;
using journal::Kind;

std::string fieldsOf(const Started &started)
{
    return nlohmann::json{{"activity", started.activity.value},
                          {"child", started.child.value},
                          {"play", started.play.value},
                          {"version", started.version}}
        .dump();
}

std::string fieldsOfEnding(const PlayId &play, Ending ending)
{
    return nlohmann::json{{"play", play.value}, {"ending", endingNames.of(ending)}}.dump();
}

std::string fieldsOfReaction(const PlayId &play, Phrase phrase)
{
    return nlohmann::json{{"play", play.value}, {"phrase", phraseNames.of(phrase)}}.dump();
}

std::string fieldsOfOffered(const ChildId &child, const ActivityId &activity)
{
    return nlohmann::json{{"child", child.value}, {"activity", activity.value}}.dump();
}

std::optional<Started> readStarted(const Event &event)
{
    if (event.kind != Kind::PlayStarted)
        return std::nullopt;
    const Fields fields(event.fields);
    const auto play = fields.text("play");
    const auto child = fields.text("child");
    const auto activity = fields.text("activity");
    const auto version = fields.whole("version", 1, 1'000'000);
    if (!play || !child || !activity || !version)
        return std::nullopt;
    return Started{{*play}, {*child}, {*activity}, *version};
}

std::optional<Play> foldPlay(std::span<const Event> events, const journal::Seen &seen)
{
    const Event *start = journal::latestOf(events, Kind::PlayStarted, seen);
    const auto started = start != nullptr ? readStarted(*start) : std::nullopt;
    if (!started)
        return std::nullopt;
    Play play{started->play,
              started->child,
              started->activity,
              started->version,
              start->author,
              start->when,
              start->instant,
              std::nullopt,
              {},
              {}};
    if (const Event *end = journal::latestOf(events, Kind::PlayEnded, seen)) {
        play.ending = endingNames.parse(Fields(end->fields).text("ending").value_or(""));
        play.endedBy = end->author;
    }
    for (const Event &event : events) {
        if (event.kind != Kind::Reaction)
            continue;
        const auto phrase = phraseNames.parse(Fields(event.fields).text("phrase").value_or(""));
        if (phrase &&
            std::find(play.phrases.begin(), play.phrases.end(), *phrase) == play.phrases.end())
            play.phrases.push_back(*phrase);
    }
    std::sort(play.phrases.begin(), play.phrases.end());
    return play;
}

std::optional<Offered> foldOffered(std::span<const Event> events)
{
    std::set<Day> days;
    for (const Event &event : events) {
        if (event.kind == Kind::Offered)
            days.insert(event.when.day);
    }
    if (days.empty())
        return std::nullopt;
    Offered offered{*days.rbegin(), std::nullopt};
    if (days.size() > 1)
        offered.before = *std::next(days.rbegin());
    return offered;
}

} // namespace lidlark::play
