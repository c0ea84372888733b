#include "core/sync/home_asked_into.h"

#include "core/store/box_repository.h"
#include "core/store/crew_repository.h"
#include "core/store/home_repository.h"

#include <algorithm>

namespace lidlark::sync {

namespace {

/// A therapist's phone knows the homes of other children too: they are nobody else's.
Result<std::vector<HomeId>> homesOfChildIn(store::Database &database, const std::string &box)
{
    const auto boxes = store::BoxRepository(database).boxes();
    if (!boxes)
        return boxes.error();
    const auto row = std::ranges::find(*boxes, BoxId{box}, &store::BoxRow::id);
    return row != boxes->end() ? store::HomeRepository(database).homesOf(row->child)
                               : Result<std::vector<HomeId>>(std::vector<HomeId>());
}

} // namespace

Result<HomeId> homeAskedInto(Post &post, const std::string &box, crew::Role role, bool another)
{
    if (role == crew::Role::Therapist)
        return HomeId{};
    if (another)
        return HomeId{post.entropy.freshId()};
    if (!post.device.home.empty())
        return post.device.home;
    const auto crew = store::CrewRepository(post.database).crewOf(box);
    const auto homes = homesOfChildIn(post.database, box);
    if (!crew || !homes)
        return crew ? homes.error() : crew.error();
    for (const crew::Member &member : crew->present()) {
        if (!member.home.empty())
            return member.home;
    }
    return homes->size() == 1 ? homes->front() : HomeId{post.entropy.freshId()};
}

} // namespace lidlark::sync
