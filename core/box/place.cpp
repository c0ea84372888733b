#include "core/box/place.h"

#include "core/box/item_changes.h"
#include "core/journal/fields.h"

#include <algorithm>

namespace lidlark::box {

namespace {

using journal::Event;

std::optional<PlaceSaid> readPlace(const Event &event)
{
    if (event.kind != journal::Kind::Place)
        return std::nullopt;
    const journal::Fields fields(event.fields);
    const auto place = fields.text("place");
    if (!place)
        return std::nullopt;
    return PlaceSaid{*place, fields.text("words").value_or(*place), event.author, event.when};
}

} // namespace

std::string fieldsOfPlace(const std::string &place, const std::string &words)
{
    return nlohmann::json{{"place", place}, {"words", words}}.dump();
}

std::optional<Place> foldPlace(std::span<const Event> events, const journal::Meetings &meetings)
{
    std::vector<const Event *> said;
    for (const Event &event : events) {
        if (readPlace(event))
            said.push_back(&event);
    }
    std::vector<const Event *> standing = standingOf(said, meetings.seen);
    if (standing.empty())
        return std::nullopt;
    std::sort(standing.begin(), standing.end(),
              [](const Event *a, const Event *b) { return writtenEarlier(*b, *a); });
    Place where{*readPlace(*standing.front()), std::nullopt};
    for (const Event *other : standing) {
        const PlaceSaid place = *readPlace(*other);
        if (!where.orElse && place.place != where.place &&
            meetings.withinMargin(*standing.front(), *other))
            where.orElse = place;
    }
    return where;
}

} // namespace lidlark::box
