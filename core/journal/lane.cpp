#include "core/journal/lane.h"

namespace lidlark::journal {

std::string toText(const Lane &lane)
{
    return std::string(laneKindNames.of(lane.kind)) + ":" + lane.scope;
}

std::optional<Lane> laneFromText(std::string_view text)
{
    const auto colon = text.find(':');
    if (colon == std::string_view::npos || colon + 1 == text.size())
        return std::nullopt;
    const auto kind = laneKindNames.parse(text.substr(0, colon));
    if (!kind)
        return std::nullopt;
    return Lane{*kind, std::string(text.substr(colon + 1))};
}

} // namespace lidlark::journal
