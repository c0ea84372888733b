#include "core/crew/opening.h"

#include "core/base/hex.h"
#include "core/crew/rights.h"
#include "core/journal/fields.h"

#include <algorithm>

namespace lidlark::crew {

namespace {

using journal::Event;
using journal::Lane;
using journal::LaneKind;

const Event *eventOf(const Opening &opening, std::span<const Event> events)
{
    const auto found = std::ranges::find_if(events, [&opening](const Event &event) {
        return event.kind == journal::Kind::Epoch &&
               journal::identityOf(event) == hexOf(opening.id);
    });
    return found == events.end() ? nullptr : &*found;
}

/// Those of @p openings that none of the others has seen.
std::vector<const Opening *> headsOf(const std::vector<const Opening *> &openings,
                                     std::span<const Event> events, const journal::Seen &seen)
{
    std::vector<const Opening *> heads;
    for (const Opening *opening : openings) {
        const bool followed = std::ranges::any_of(openings, [&](const Opening *other) {
            return follows(*other, *opening, events, seen);
        });
        if (!followed)
            heads.push_back(opening);
    }
    return heads;
}

} // namespace

std::set<DeviceId> Opening::holders() const
{
    std::set<DeviceId> devices;
    for (const auto &[device, letter] : letters)
        devices.insert(device);
    return devices;
}

std::string fieldsOf(const Opening &opening)
{
    nlohmann::json letters = nlohmann::json::object();
    for (const auto &[device, letter] : opening.letters)
        letters[device.value] =
            hexOf({reinterpret_cast<const std::uint8_t *>(letter.data()), letter.size()});
    nlohmann::json fields{{"lane", toText(opening.lane)}, {"letters", letters}};
    if (!opening.writer.empty())
        fields["writer"] = opening.writer.value;
    return fields.dump();
}

std::optional<Opening> readOpening(const Event &event)
{
    if (event.kind != journal::Kind::Epoch)
        return std::nullopt;
    const journal::Fields fields(event.fields);
    const auto lane = journal::laneFromText(fields.text("lane").value_or(""));
    const auto letters = fields.json().find("letters");
    if (!lane || letters == fields.json().end() || !letters->is_object())
        return std::nullopt;
    Opening opening{blake2b(journal::canonicalText(event)),
                    *lane,
                    event.device,
                    {fields.text("writer").value_or("")},
                    {}};
    for (const auto &[device, letter] : letters->items()) {
        const auto bytes = letter.is_string() ? bytesFromHex(letter.get<std::string>()) : std::nullopt;
        if (!bytes)
            return std::nullopt;
        opening.letters[{device}] = *bytes;
    }
    return opening;
}

bool mayOpen(const Member &member, const Lane &lane)
{
    return member.role != Role::Guest && mayRead(member, lane);
}

std::vector<Opening> openingsAmong(std::span<const Event> events, const Crew &crew)
{
    std::vector<Opening> openings;
    for (const Event &event : events) {
        auto opening = readOpening(event);
        const Member *by = crew.member(event.device);
        if (opening && by != nullptr && mayOpen(*by, opening->lane) && counts(crew, event))
            openings.push_back(std::move(*opening));
    }
    return openings;
}

bool follows(const Opening &later, const Opening &earlier, std::span<const Event> events,
             const journal::Seen &seen)
{
    const Event *first = eventOf(earlier, events);
    const Event *second = eventOf(later, events);
    return first != nullptr && second != nullptr && seen.saw(*second, *first);
}

InForce inForce(const Strand &strand, const std::vector<Opening> &openings,
                std::span<const Event> events, const journal::Seen &seen,
                const std::set<DeviceId> &entitled)
{
    std::vector<const Opening *> ofLane;
    for (const Opening &opening : openings) {
        if (opening.lane == strand.lane && opening.writer == strand.writer)
            ofLane.push_back(&opening);
    }
    const auto heads = headsOf(ofLane, events, seen);
    if (heads.empty())
        return {nullptr, true};
    const Opening *smallest = heads.front();
    bool agreed = true;
    for (const Opening *head : heads) {
        agreed = agreed && head->holders() == heads.front()->holders();
        if (head->id < smallest->id)
            smallest = head;
    }
    if (!agreed)
        return {nullptr, true};
    return {smallest, smallest->holders() != entitled};
}

} // namespace lidlark::crew
