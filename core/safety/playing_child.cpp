#include "core/safety/playing_child.h"

#include <algorithm>

namespace lidlark::safety {

child::Person playingChild(const child::HomeSheet *home, const child::Child &playing)
{
    child::Person player;
    player.id = {playing.id.value};
    player.alias = playing.alias;
    player.age = playing.age;
    if (!home)
        return player;
    const auto row = std::find_if(home->people.begin(), home->people.end(),
                                  [&player](const child::Person &p) { return p.id == player.id; });
    if (row == home->people.end())
        return player;
    player.mouths = row->mouths;
    player.pica = row->pica;
    if (player.age && row->age)
        player.age->latestBirth = std::max(player.age->latestBirth, row->age->latestBirth);
    return player;
}

} // namespace lidlark::safety
