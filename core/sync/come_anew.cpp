#include "core/sync/come_anew.h"

#include "core/store/crew_repository.h"
#include "core/sync/own_secret.h"

#include <algorithm>

namespace lidlark::sync {

Outcome comeAnew(Post &post, SecretKeeper &keeper)
{
    const auto crews = store::CrewRepository(post.database).all();
    if (!crews)
        return crews.error();
    const bool wasIn = std::ranges::any_of(*crews, [&post](const auto &entry) {
        return entry.second.member(post.device.id) != nullptr;
    });
    return wasIn ? takeNewId(post, keeper) : Outcome(Done{});
}

} // namespace lidlark::sync
