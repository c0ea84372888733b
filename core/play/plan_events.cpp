#include "core/play/plan_events.h"

#include "core/journal/fields.h"
#include "core/journal/latest.h"

namespace lidlark::play {

std::string fieldsOf(const ChildId &child, Day day, const DayWish &wish)
{
    return nlohmann::json{{"child", child.value},
                          {"day", toText(day)},
                          {"wish", wishNames.of(wish.wish)},
                          {"activity", wish.activity.value}}
        .dump();
}

std::optional<DayWish> foldDayWish(std::span<const journal::Event> events,
                                   const journal::Seen &seen)
{
    const journal::Event *latest = journal::latestOf(events, journal::Kind::Planned, seen);
    if (latest == nullptr)
        return std::nullopt;
    const journal::Fields fields(latest->fields);
    const auto wish = wishNames.parse(fields.text("wish").value_or(""));
    const auto activity = fields.text("activity");
    if (!wish || !activity || *wish == Wish::Open || (*wish == Wish::Keep && activity->empty()))
        return std::nullopt;
    return DayWish{*wish, {*activity}};
}

} // namespace lidlark::play
