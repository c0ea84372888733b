#include "core/play/grading_events.h"

#include "core/journal/fields.h"
#include "core/journal/latest.h"

#include <algorithm>

namespace lidlark::play {

namespace {

using Json = nlohmann::json;

constexpr const char *notPinned = "none";

} // namespace

const std::vector<catalogue::Grading> &linesOf(const catalogue::Activity &activity, Way way)
{
    static const std::vector<catalogue::Grading> none;
    switch (way) {
    case Way::Easier:
        return activity.easier;
    case Way::Harder:
        return activity.harder;
    case Way::AsWritten:
        break;
    }
    return none;
}

const catalogue::Grading *lineFor(const catalogue::Activity &activity, const GradingUsed &used)
{
    const auto &lines = linesOf(activity, used.way);
    const auto found = std::ranges::find(lines, used.lever, &catalogue::Grading::lever);
    return found != lines.end() ? &*found : nullptr;
}

GradingUsed afterTap(const catalogue::Activity &activity, const GradingUsed &current, Way way)
{
    const auto &lines = linesOf(activity, way);
    auto next = lines.begin();
    if (current.way == way) {
        next = std::ranges::find(lines, current.lever, &catalogue::Grading::lever);
        next = next == lines.end() ? lines.begin() : std::next(next);
    }
    return next == lines.end() ? GradingUsed{} : GradingUsed{way, next->lever};
}

std::string fieldsOf(const ChildId &child, const ActivityId &activity, const GradingUsed &used)
{
    return Json{{"child", child.value},
                {"activity", activity.value},
                {"way", wayNames.of(used.way)},
                {"lever", catalogue::leverNames.of(used.lever)}}
        .dump();
}

std::string fieldsOfPin(const ActivityId &activity, const std::optional<GradingUsed> &pinned)
{
    const GradingUsed used = pinned.value_or(GradingUsed{});
    return Json{{"activity", activity.value},
                {"way", pinned ? wayNames.of(used.way) : std::string_view(notPinned)},
                {"lever", catalogue::leverNames.of(used.lever)}}
        .dump();
}

std::optional<GradingUsed> foldGrading(std::span<const journal::Event> events,
                                       const journal::Seen &seen, journal::Kind kind)
{
    const journal::Event *latest = journal::latestOf(events, kind, seen);
    if (latest == nullptr)
        return std::nullopt;
    const journal::Fields fields(latest->fields);
    const auto way = wayNames.parse(fields.text("way").value_or(""));
    const auto lever = catalogue::leverNames.parse(fields.text("lever").value_or(""));
    return way && lever ? std::optional(GradingUsed{*way, *lever}) : std::nullopt;
}

} // namespace lidlark::play
