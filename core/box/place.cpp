#include "core/box/place.h"

#include "core/journal/fields.h"
#include "core/journal/latest.h"

namespace lidlark::box {

std::string fieldsOfPlace(const std::string &place, const std::string &words)
{
    return nlohmann::json{{"place", place}, {"words", words}}.dump();
}

std::optional<Place> foldPlace(std::span<const journal::Event> events, const journal::Seen &seen)
{
    const journal::Event *event = journal::latestOf(events, journal::Kind::Place, seen);
    if (event == nullptr)
        return std::nullopt;
    const journal::Fields fields(event->fields);
    const auto place = fields.text("place");
    if (!place)
        return std::nullopt;
    return Place{*place, fields.text("words").value_or(*place), event->author, event->when};
}

} // namespace lidlark::box
