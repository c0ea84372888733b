#include "core/checkin/checkin_events.h"

#include "core/journal/fields.h"
#include "core/journal/latest.h"

#include <algorithm>

namespace lidlark::checkin {

using journal::Fields;

std::string fieldsOf(const CheckIn &checkIn)
{
    nlohmann::json object{{"id", checkIn.id},
                          {"child", checkIn.child.value},
                          {"before", kiteNames.of(checkIn.before)},
                          {"by", shownByNames.of(checkIn.shownBy)}};
    if (checkIn.after) {
        object["after"] = kiteNames.of(*checkIn.after);
        object["activity"] = checkIn.activity.value;
    }
    return object.dump();
}

std::string fieldsOfRemoval(const std::string &id, const ChildId &child)
{
    return nlohmann::json{{"id", id}, {"child", child.value}, {"removed", true}}.dump();
}

std::string subjectOf(const std::string &id, const ChildId &child)
{
    return "check-in:" + child.value + "/" + id;
}

std::optional<CheckIn> foldCheckIn(std::span<const journal::Event> events,
                                   const journal::Seen &seen)
{
    const bool removed = std::any_of(events.begin(), events.end(), [](const auto &event) {
        return Fields(event.fields).isTrue("removed");
    });
    const journal::Event *latest = journal::latestOf(events, journal::Kind::CheckIn, seen);
    if (removed || latest == nullptr)
        return std::nullopt;
    const Fields fields(latest->fields);
    const auto id = fields.text("id");
    const auto child = fields.text("child");
    const auto before = kiteNames.parse(fields.text("before").value_or(""));
    const auto by = shownByNames.parse(fields.text("by").value_or(""));
    if (!id || !child || !before || !by)
        return std::nullopt;
    CheckIn checkIn{*id, {*child}, latest->when, *before, *by, std::nullopt, {}};
    checkIn.after = kiteNames.parse(fields.text("after").value_or(""));
    if (checkIn.after)
        checkIn.activity = {fields.text("activity").value_or("")};
    return checkIn;
}

} // namespace lidlark::checkin
