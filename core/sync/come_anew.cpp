#include "core/sync/come_anew.h"

#include "core/store/box_repository.h"
#include "core/store/crew_repository.h"
#include "core/sync/own_secret.h"

namespace lidlark::sync {

Outcome comeAnew(Post &post, SecretKeeper &keeper)
{
    const auto boxes = store::BoxRepository(post.database).boxes();
    if (!boxes)
        return boxes.error();
    for (const store::BoxRow &box : *boxes) {
        const auto crew = store::CrewRepository(post.database).crewOf(box.id.value);
        if (!crew)
            return crew.error();
        if (crew->member(post.device.id) != nullptr)
            return takeNewId(post, keeper);
    }
    return Done{};
}

} // namespace lidlark::sync
