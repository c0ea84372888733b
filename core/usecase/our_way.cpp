#include "core/usecase/our_way.h"

#include "core/store/box_repository.h"
#include "core/store/note_repository.h"
#include "core/usecase/say_one.h"
#include "core/usecase/typed_line.h"

namespace lidlark::usecase {

Outcome keepOurWay(Workplace &workplace, const std::string &childAlias, const ActivityId &activity,
                   const std::string &words)
{
    if (workplace.device.role == store::Role::Guest || workplace.device.home.empty())
        return Error{ErrorCode::Invalid, "our way: only this home's own phones keep it"};
    if (workplace.catalogue.activity(activity) == nullptr)
        return Error{ErrorCode::NotFound, "the activity " + activity.value};
    const auto line = typedLine("our way", words, play::longestWay);
    if (!line)
        return line.error();
    const auto box = store::BoxRepository(workplace.database).boxOf(childAlias);
    if (!box)
        return box.error();
    const auto kept = store::NoteRepository(workplace.database)
                          .ourWay(workplace.device.home, box->child, activity);
    if (!kept)
        return kept.error();
    if ((*kept ? (*kept)->words : std::string()) == *line)
        return Done{};
    return sayOne(workplace, {journal::LaneKind::Home, workplace.device.home.value},
                  journal::Kind::OurWay, play::fieldsOfOurWay(box->child, activity, *line));
}

Result<std::optional<play::OurWay>> ourWayOf(Workplace &workplace, const std::string &childAlias,
                                             const ActivityId &activity)
{
    const auto box = store::BoxRepository(workplace.database).boxOf(childAlias);
    if (!box)
        return box.error();
    return store::NoteRepository(workplace.database)
        .ourWay(workplace.device.home, box->child, activity);
}

} // namespace lidlark::usecase
