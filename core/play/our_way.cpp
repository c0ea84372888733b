#include "core/play/our_way.h"

#include "core/journal/fields.h"
#include "core/journal/latest.h"

namespace lidlark::play {

std::string fieldsOfOurWay(const ChildId &child, const ActivityId &activity,
                           const std::string &words)
{
    return nlohmann::json{{"child", child.value}, {"activity", activity.value}, {"words", words}}
        .dump();
}

std::optional<OurWay> foldOurWay(std::span<const journal::Event> events, const journal::Seen &seen)
{
    const journal::Event *latest = journal::latestOf(events, journal::Kind::OurWay, seen);
    if (latest == nullptr)
        return std::nullopt;
    const auto words = journal::Fields(latest->fields).text("words");
    if (!words || words->empty())
        return std::nullopt;
    return OurWay{*words, latest->author, latest->when};
}

} // namespace lidlark::play
