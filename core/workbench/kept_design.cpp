#include "core/workbench/kept_design.h"

#include "core/journal/fields.h"
#include "core/journal/latest.h"

#include <algorithm>
#include <set>

namespace lidlark::workbench {

namespace {

using journal::Event;
using journal::Fields;
using Json = nlohmann::json;

constexpr std::size_t mostParts = 100; ///< A lid list is read at arm's length; this is far beyond.

std::optional<std::string> textAt(const Json &object, const char *key)
{
    const auto found = object.find(key);
    return found != object.end() && found->is_string() ? std::optional(found->get<std::string>())
                                                       : std::nullopt;
}

std::optional<BoxPart> partFrom(const Json &json)
{
    if (!json.is_object() || !json.contains("pieces"))
        return std::nullopt;
    const auto item = textAt(json, "item");
    const auto pieces = Fields::wholeOf(json.at("pieces"), 1, mostPiecesInBox);
    if (!item || item->empty() || !pieces)
        return std::nullopt;
    return BoxPart{{*item}, *pieces, {textAt(json, "instead_of").value_or("")}};
}

} // namespace

Json jsonOf(const std::vector<BoxPart> &parts)
{
    Json list = Json::array();
    for (const BoxPart &part : parts) {
        Json object{{"item", part.item.value}, {"pieces", part.pieces}};
        if (!part.insteadOf.empty())
            object["instead_of"] = part.insteadOf.value;
        list.push_back(object);
    }
    return list;
}

std::optional<std::vector<BoxPart>> partsFrom(const Json &json)
{
    if (!json.is_array() || json.size() > mostParts)
        return std::nullopt;
    std::vector<BoxPart> parts;
    std::set<ItemId> items;
    for (const Json &one : json) {
        const auto part = partFrom(one);
        if (!part || !items.insert(part->item).second)
            return std::nullopt;
        parts.push_back(*part);
    }
    return parts;
}

std::optional<Design> designFrom(const std::string &text)
{
    const Fields fields(text);
    const auto id = fields.text("id");
    const auto parts = partsFrom(fields.json().value("parts", Json::array()));
    if (!id || id->empty() || !parts)
        return std::nullopt;
    return Design{{*id}, fields.text("name").value_or(*id), *parts};
}

std::string fieldsOf(const Design &design)
{
    return Json{{"id", design.id.value}, {"name", design.name}, {"parts", jsonOf(design.parts)}}
        .dump();
}

std::string fieldsOfDesignRemoval(const DesignId &id)
{
    return Json{{"id", id.value}, {"removed", true}}.dump();
}

std::optional<Design> foldDesign(std::span<const Event> events, const journal::Seen &seen)
{
    std::vector<Event> readable;
    std::ranges::copy_if(events, std::back_inserter(readable),
                         [](const Event &event) { return designFrom(event.fields).has_value(); });
    const Event *latest = journal::latestOf(readable, journal::Kind::Design, seen);
    if (latest == nullptr || Fields(latest->fields).isTrue("removed"))
        return std::nullopt;
    return designFrom(latest->fields);
}

std::optional<std::string> problemWith(const std::vector<BoxPart> &parts)
{
    if (parts.size() > mostParts)
        return "lid list: more than 100 lines";
    std::set<ItemId> items;
    for (const BoxPart &part : parts) {
        if (part.item.empty())
            return "item: empty";
        if (part.pieces < 1 || part.pieces > mostPiecesInBox)
            return part.item.value + ": 1 to 1000 pieces";
        if (!items.insert(part.item).second)
            return part.item.value + ": named twice";
    }
    return std::nullopt;
}

std::optional<std::string> problemWith(const Design &design)
{
    if (design.name.empty())
        return "name: empty";
    if (design.name.size() > longestName)
        return "name: too long";
    if (design.parts.empty())
        return "lid list: empty";
    return problemWith(design.parts);
}

} // namespace lidlark::workbench
