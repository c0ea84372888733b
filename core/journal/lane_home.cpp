#include "core/journal/lane_home.h"

#include <string_view>

namespace lidlark::journal {

namespace {

constexpr std::string_view playsMark = ":plays";

} // namespace

Lane sharedPlaysOf(const std::string &home)
{
    return {LaneKind::Shared, home + std::string(playsMark)};
}

std::string homeOf(const Lane &lane)
{
    switch (lane.kind) {
    case LaneKind::Safety:
    case LaneKind::Home:
    case LaneKind::CheckIns:
        return lane.scope;
    case LaneKind::Shared:
        return lane.scope.ends_with(playsMark)
                   ? lane.scope.substr(0, lane.scope.size() - playsMark.size())
                   : std::string();
    case LaneKind::Box:
    case LaneKind::Goals:
    case LaneKind::Notes:
    case LaneKind::Clinic:
        break;
    }
    return {};
}

bool tellsNoTime(LaneKind kind)
{
    return kind == LaneKind::CheckIns || kind == LaneKind::Shared;
}

} // namespace lidlark::journal
