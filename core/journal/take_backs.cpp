#include "core/journal/take_backs.h"

#include "core/journal/fields.h"

#include <algorithm>
#include <cstddef>
#include <map>

namespace lidlark::journal {

namespace {

/// Which event each TakenBack names, and how many names each event has that are still to be looked
/// at.
struct Naming {
    std::vector<std::optional<std::size_t>> target;
    std::vector<int> namedBy;
};

Naming namingOf(const std::vector<Event> &events)
{
    std::map<std::string, std::size_t> places;
    for (std::size_t i = 0; i < events.size(); ++i)
        places.emplace(identityOf(events[i]), i);
    Naming naming{std::vector<std::optional<std::size_t>>(events.size()),
                  std::vector<int>(events.size(), 0)};
    for (std::size_t i = 0; i < events.size(); ++i) {
        const auto named = takenBackBy(events[i]);
        const auto place = named ? places.find(*named) : places.end();
        if (place == places.end() || !givesWayTo(events[place->second], events[i]))
            continue;
        naming.target[i] = place->second;
        ++naming.namedBy[place->second];
    }
    return naming;
}

bool anyTakenBack(const std::vector<Event> &events)
{
    return std::any_of(events.begin(), events.end(),
                       [](const Event &event) { return event.kind == Kind::TakenBack; });
}

} // namespace

bool canBeTakenBack(Kind kind)
{
    switch (kind) {
    case Kind::Met:
    case Kind::Child:
    case Kind::Member:
    case Kind::MemberRemoved:
    case Kind::Epoch:
    case Kind::Erased:
    case Kind::Revision:
    case Kind::Permission:
    case Kind::Offered:
    case Kind::CheckIn:
    case Kind::Goal:
    case Kind::Reads:       // chosen again in one tap
    case Kind::OwnActivity: // written again, or thrown away
    case Kind::OwnItem:
    case Kind::OwnEntry: // withdrawn
        return false;
    case Kind::Outcome:
    case Kind::Exception:
    case Kind::Found:
    case Kind::Count:
    case Kind::FloorChecked:
    case Kind::Opened:
    case Kind::LeftOpen:
    case Kind::Checked:
    case Kind::Limit:
    case Kind::Hygiene:
    case Kind::TakenOut:
    case Kind::Place:
    case Kind::Request:
    case Kind::CountedIn:
    case Kind::Answer:
    case Kind::Fact:
    case Kind::PlayStarted:
    case Kind::PlayEnded:
    case Kind::Reaction:
    case Kind::Grading:
    case Kind::GradingPin:
    case Kind::Planned:
    case Kind::OurWay:
    case Kind::Note:
    case Kind::NoteSent:
    case Kind::TakenBack:
    case Kind::GoalRated:
    case Kind::VideoPlan:
    case Kind::HaveReady:
    case Kind::Supply:
    case Kind::Design:
    case Kind::Build:
    case Kind::PackMark:
    case Kind::BoxStatus:
    case Kind::Sharing:
        break;
    }
    return true;
}

std::string fieldsOfTakingBack(const Event &event)
{
    return nlohmann::json{{"about", subjectOf(event)}, {"event", identityOf(event)}}.dump();
}

std::optional<std::string> takenBackBy(const Event &event)
{
    if (event.kind != Kind::TakenBack)
        return std::nullopt;
    return Fields(event.fields).text("event");
}

std::string fieldsWith(const std::string &fields, std::uint64_t first)
{
    auto json = nlohmann::json::parse(fields, nullptr, false);
    if (!json.is_object())
        return fields;
    json["with"] = first;
    return json.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
}

std::uint64_t breathOf(const Event &event)
{
    const Fields fields(event.fields);
    const auto first = fields.json().find("with");
    const bool told = first != fields.json().end() && first->is_number_unsigned();
    return told ? first->get<std::uint64_t>() : event.counter;
}

bool givesWayTo(const Event &event, const Event &taking)
{
    if (!canBeTakenBack(event.kind) || event.lane != taking.lane ||
        event.when.day != taking.when.day)
        return false;
    const bool byDevice = event.lane.kind != LaneKind::Safety && event.device == taking.device;
    return byDevice || event.author == taking.author;
}

std::vector<bool> whichStand(const std::vector<Event> &events)
{
    std::vector<bool> stands(events.size(), true);
    if (!anyTakenBack(events))
        return stands;
    Naming naming = namingOf(events);
    std::vector<std::size_t> settled; // nothing that is still open names these
    settled.reserve(events.size());
    for (std::size_t i = 0; i < events.size(); ++i) {
        if (naming.namedBy[i] == 0)
            settled.push_back(i);
    }
    for (std::size_t next = 0; next < settled.size(); ++next) {
        const auto target = naming.target[settled[next]];
        if (!target)
            continue;
        if (stands[settled[next]])
            stands[*target] = false;
        if (--naming.namedBy[*target] == 0)
            settled.push_back(*target);
    }
    return stands;
}

std::vector<Event> withoutTakenBack(std::vector<Event> events)
{
    const std::vector<bool> stands = whichStand(events);
    std::size_t kept = 0;
    for (std::size_t i = 0; i < events.size(); ++i) {
        if (!stands[i] || events[i].kind == Kind::TakenBack)
            continue;
        if (kept != i)
            events[kept] = std::move(events[i]);
        ++kept;
    }
    events.resize(kept);
    return events;
}

} // namespace lidlark::journal
