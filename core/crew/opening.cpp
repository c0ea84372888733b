#include "core/crew/opening.h"

#include "core/base/hex.h"
#include "core/crew/rights.h"
#include "core/journal/fields.h"

#include <algorithm>

namespace lidlark::crew {

using journal::Event;
using journal::Lane;

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
    nlohmann::json after = nlohmann::json::array();
    for (const Digest &id : opening.after)
        after.push_back(hexOf(id));
    nlohmann::json fields{{"lane", toText(opening.lane)}, {"letters", letters}, {"after", after}};
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
    Opening opening{blake2b(journal::canonicalText(event)), *lane, event.device,
                    {fields.text("writer").value_or("")},   {},    {}};
    for (const auto &[device, letter] : letters->items()) {
        const auto bytes =
            letter.is_string() ? bytesFromHex(letter.get<std::string>()) : std::nullopt;
        if (!bytes)
            return std::nullopt;
        opening.letters[{device}] = *bytes;
    }
    const auto after = fields.json().find("after");
    if (after != fields.json().end() && after->is_array()) {
        for (const auto &id : *after) {
            if (const auto digest = arrayFromHex<32>(id.is_string() ? id.get<std::string>() : ""))
                opening.after.insert(*digest);
        }
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

bool follows(const Digest &later, const Digest &earlier, const std::vector<Opening> &openings)
{
    std::vector<Digest> ahead{later};
    std::set<Digest> seen;
    while (!ahead.empty()) {
        const Digest id = ahead.back();
        ahead.pop_back();
        const auto opening = std::ranges::find(openings, id, &Opening::id);
        if (!seen.insert(id).second || opening == openings.end())
            continue;
        if (opening->after.contains(earlier))
            return true;
        ahead.insert(ahead.end(), opening->after.begin(), opening->after.end());
    }
    return false;
}

std::vector<const Opening *> headsOf(const Strand &strand, const std::vector<Opening> &openings)
{
    std::vector<const Opening *> heads;
    for (const Opening &opening : openings) {
        const bool followed = std::ranges::any_of(openings, [&](const Opening &other) {
            return follows(other.id, opening.id, openings);
        });
        if (opening.lane == strand.lane && opening.writer == strand.writer && !followed)
            heads.push_back(&opening);
    }
    return heads;
}

InForce inForce(const Strand &strand, const std::vector<Opening> &openings,
                const std::set<DeviceId> &entitled)
{
    const auto heads = headsOf(strand, openings);
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
