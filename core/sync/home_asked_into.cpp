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
    store::HomeRepository known(database);
    const auto all = known.homes();
    if (!boxes || !all)
        return boxes ? all.error() : boxes.error();
    const auto row = std::ranges::find(*boxes, BoxId{box}, &store::BoxRow::id);
    std::vector<HomeId> homes;
    for (const HomeId &home : row != boxes->end() ? *all : std::vector<HomeId>()) {
        const auto lives = known.fact(home, row->child.value, "lives");
        if (!lives)
            return lives.error();
        if (*lives)
            homes.push_back(home);
    }
    return homes;
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
