#include "core/crew/opening.h"

#include "core/base/hex.h"
#include "core/crew/letters.h"
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
    nlohmann::json after = nlohmann::json::array();
    for (const Digest &id : opening.after)
        after.push_back(hexOf(id));
    nlohmann::json fields{
        {"lane", toText(opening.lane)}, {"letters", jsonOf(opening.letters)}, {"after", after}};
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
    const auto letters = lettersIn(fields.json(), "letters");
    if (!lane || !letters)
        return std::nullopt;
    Opening opening{blake2b(journal::canonicalText(event)), *lane,    event.device,
                    {fields.text("writer").value_or("")},   *letters, {}};
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

std::set<Digest> allBefore(const Digest &id, const std::vector<Opening> &openings)
{
    std::vector<Digest> ahead{id};
    std::set<Digest> before;
    while (!ahead.empty()) {
        const auto opening = std::ranges::find(openings, ahead.back(), &Opening::id);
        ahead.pop_back();
        if (opening == openings.end())
            continue;
        for (const Digest &earlier : opening->after) {
            if (before.insert(earlier).second)
                ahead.push_back(earlier);
        }
    }
    return before;
}

bool follows(const Digest &later, const Digest &earlier, const std::vector<Opening> &openings)
{
    return allBefore(later, openings).contains(earlier);
}

std::vector<const Opening *> headsOf(const Strand &strand, const std::vector<Opening> &openings)
{
    std::set<Digest> followed;
    for (const Opening &opening : openings)
        followed.insert(opening.after.begin(), opening.after.end());
    std::vector<const Opening *> heads;
    for (const Opening &opening : openings) {
        if (opening.lane == strand.lane && opening.writer == strand.writer &&
            !followed.contains(opening.id))
            heads.push_back(&opening);
    }
    return heads;
}

std::set<DeviceId> guestsLeftOut(const Lane &lane, const std::vector<Opening> &openings,
                                 const Crew &crew)
{
    std::set<DeviceId> out;
    for (const Opening &earlier : openings) {
        if (earlier.lane != lane || !earlier.writer.empty())
            continue;
        for (const auto &[device, letter] : earlier.letters) {
            const Member *member = crew.member(device);
            if (member == nullptr || member->role != Role::Guest)
                continue;
            const bool left = std::ranges::any_of(openings, [&](const Opening &later) {
                return later.lane == lane && later.writer.empty() &&
                       !later.letters.contains(device) && follows(later.id, earlier.id, openings);
            });
            if (left)
                out.insert(device);
        }
    }
    return out;
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
