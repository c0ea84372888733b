#include "core/workbench/video_plan.h"

#include "core/journal/fields.h"
#include "core/journal/latest.h"

#include <algorithm>

namespace lidlark::workbench {

namespace {

using journal::Event;
using journal::Fields;
using journal::Kind;
using Json = nlohmann::json;

constexpr int minutesOfDay = 24 * 60;
constexpr int highestRevision = 1'000'000;

Json listOf(const std::vector<ActivityId> &activities)
{
    Json list = Json::array();
    for (const ActivityId &activity : activities)
        list.push_back(activity.value);
    return list;
}

/// @returns nothing for more than @p most, for one that is none, and for one that stands twice.
std::optional<std::vector<ActivityId>> activitiesIn(const Fields &fields, const char *key,
                                                    std::size_t most)
{
    const auto found = fields.json().find(key);
    if (found == fields.json().end() || !found->is_array() || found->size() > most)
        return std::nullopt;
    std::vector<ActivityId> activities;
    for (const Json &entry : *found) {
        ActivityId id{entry.is_string() ? entry.get<std::string>() : std::string()};
        const bool twice = std::find(activities.begin(), activities.end(), id) != activities.end();
        if (id.value.empty() || twice)
            return std::nullopt;
        activities.push_back(std::move(id));
    }
    return activities;
}

} // namespace

std::string fieldsOf(const VideoPlan &plan)
{
    Json fields{{"plan", plan.id},
                {"home", plan.home.value},
                {"day", toText(plan.day)},
                {"minute", plan.minuteOfDay},
                {"revision", plan.revision},
                {"activities", listOf(plan.activities)},
                {"spares", listOf(plan.spares)}};
    if (plan.calledOff)
        fields["called-off"] = true;
    return fields.dump();
}

std::optional<VideoPlan> readVideoPlan(const Event &event)
{
    const Fields fields(event.fields);
    const auto id = fields.text("plan");
    const auto day = dayFromText(fields.text("day").value_or(""));
    const auto minute = fields.whole("minute", 0, minutesOfDay - 1);
    const auto revision = fields.whole("revision", 1, highestRevision);
    auto activities = activitiesIn(fields, "activities", mostPlayed);
    auto spares = activitiesIn(fields, "spares", mostSpares);
    if (event.kind != Kind::VideoPlan || !id || id->empty() || !day || !minute || !revision ||
        !activities || activities->empty() || !spares)
        return std::nullopt;
    return VideoPlan{*id,
                     {fields.text("home").value_or("")},
                     *day,
                     *minute,
                     *revision,
                     *std::move(activities),
                     *std::move(spares),
                     fields.isTrue("called-off")};
}

std::string subjectOfPlan(const std::string &id)
{
    return "video-plan:" + id;
}

std::optional<VideoPlan> foldVideoPlan(std::span<const Event> events, const journal::Seen &seen)
{
    std::vector<Event> plans;
    for (const Event &event : events) {
        if (readVideoPlan(event))
            plans.push_back(event);
    }
    const Event *last = journal::latestOf(plans, Kind::VideoPlan, seen);
    return last != nullptr ? readVideoPlan(*last) : std::nullopt;
}

std::string fieldsOfAtHand(const std::string &plan, const ItemId &item, bool here)
{
    return Json{{"plan", plan}, {"item", item.value}, {"here", here}}.dump();
}

std::map<ItemId, AtHand> foldAtHand(std::span<const Event> events, const journal::Seen &seen)
{
    std::map<ItemId, std::vector<Event>> byItem;
    for (const Event &event : events) {
        const auto item = Fields(event.fields).text("item");
        if (event.kind == Kind::HaveReady && item && !item->empty())
            byItem[{*item}].push_back(event);
    }
    std::map<ItemId, AtHand> said;
    for (const auto &[item, ofItem] : byItem) {
        const Event *last = journal::latestOf(ofItem, Kind::HaveReady, seen);
        said[item] = {Fields(last->fields).isTrue("here"), last->author, last->when.day};
    }
    return said;
}

} // namespace lidlark::workbench
