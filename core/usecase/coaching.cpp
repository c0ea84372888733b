#include "core/usecase/coaching.h"

#include "core/store/box_repository.h"

namespace lidlark::usecase {

namespace {

constexpr auto lineCount = static_cast<std::size_t>(coachingLines);

std::string keyOf(const BoxId &box)
{
    return "coaching." + box.value;
}

} // namespace

Result<std::vector<bool>> coachingOf(Workplace &workplace, const std::string &childAlias)
{
    const auto box = store::BoxRepository(workplace.database).boxOf(childAlias);
    if (!box)
        return box.error();
    const auto kept = store::DeviceRepository(workplace.database).localState(keyOf(box->id));
    if (!kept)
        return kept.error();
    std::vector<bool> ticks(lineCount, false);
    for (std::size_t line = 0; *kept && line < lineCount && line < (*kept)->size(); ++line)
        ticks[line] = (**kept)[line] == '1';
    return ticks;
}

Outcome tickCoaching(Workplace &workplace, const std::string &childAlias, int line, bool done)
{
    if (line < 0 || line >= coachingLines)
        return Error{ErrorCode::Invalid, "line: 0 to 5"};
    const auto box = store::BoxRepository(workplace.database).boxOf(childAlias);
    auto ticks = coachingOf(workplace, childAlias);
    if (!box || !ticks)
        return box ? ticks.error() : box.error();
    (*ticks)[static_cast<std::size_t>(line)] = done;
    std::string text;
    for (const bool tick : *ticks)
        text += tick ? '1' : '0';
    return store::DeviceRepository(workplace.database).setLocalState(keyOf(box->id), text);
}

} // namespace lidlark::usecase
