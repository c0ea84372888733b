#include "core/sync/home_asked_into.h"

#include "core/store/crew_repository.h"
#include "core/store/home_repository.h"

namespace lidlark::sync {

Result<HomeId> homeAskedInto(Post &post, const std::string &box, crew::Role role, bool another)
{
    if (role == crew::Role::Therapist)
        return HomeId{};
    if (another)
        return HomeId{post.entropy.freshId()};
    if (!post.device.home.empty())
        return post.device.home;
    const auto crew = store::CrewRepository(post.database).crewOf(box);
    const auto homes = store::HomeRepository(post.database).homes();
    if (!crew || !homes)
        return crew ? homes.error() : crew.error();
    for (const crew::Member &member : crew->present()) {
        if (!member.home.empty())
            return member.home;
    }
    return homes->size() == 1 ? homes->front() : HomeId{post.entropy.freshId()};
}

} // namespace lidlark::sync
