#include "core/wording/tag_words.h"

#include <array>

namespace lidlark::wording {

namespace {

struct TagWords {
    English thing;
    English shortWords;
    English caution;
};

/// In the order of catalogue::Tag.
constexpr std::array<TagWords, catalogue::tagCount> words{{
    {say("small parts"), say("Small parts"),
     say("Small parts: count them out and count them back.")},
    {say("balloons"), say("Balloon"),
     say("Only an adult pumps it up or handles it flat. Pick up every piece if it bursts.")},
    {say("latex"), say("Latex"), say("Made of latex: not in a home where anyone must avoid it.")},
    {say("rubber bands"), say("Rubber bands"),
     say("Never on a finger, a wrist or a neck. Pluck away from faces.")},
    {say("a stretchy band"), say("Stretchy band"),
     say("Look for nicks first. An adult holds it. Never near a face, a neck or a door handle.")},
    {say("cords"), say("Cord"),
     say("Never round a neck or a wrist. Straight back into the lid bag.")},
    {say("scissors"), say("Scissors"),
     say("Sitting down to cut. Closed, blades in the fist, when carried.")},
    {say("coins"), say("Coins"),
     say("Check the handful: a button battery can look like a coin. Count out and back.")},
    {say("foam"), say("Foam"),
     say("Hands wiped before they touch eyes or mouth. The can stays with you.")},
    {say("foil"), say("Foil"), say("Fold sharp edges in. Collect every scrap.")},
    {say("straws"), say("Straw"),
     say("Sitting the whole time, never walking with it. One straw, one child.")},
    {say("dough"), say("Dough"), say("Dough is for hands, not for mouths.")},
    {say("wheat"), say("Wheat"), say("Wheat in the dough. Wash hands and wipe the table after.")},
    {say("stickers"), say("Stickers"), say("Stickers stay out of mouths. Count them back.")},
    {say("paper"), say("Paper"), say("Paper pieces stay over 6 cm where anyone mouths things.")},
    {say("forks"), say("Fork"), say("A blunt table fork, sitting down.")},
    {say("salty dough"), say("Pets"),
     say("Salty dough can poison dogs and cats: lid on, up high.")},
    {say("things for one child only"), say("One child"),
     say("For this child only. Wash hands before and after.")},
    {say("strong smells"), say("Smell"),
     say("It smells. Stop if skin, eyes or breath do not like it.")},
    {say("water"), say("Water"),
     say("Stay beside the water. Empty it before anyone leaves, and dry the floor.")},
    {say("puffing games"), say("Breath"),
     say("At most five breaths or puffs, then rest. Stop if dizzy.")},
    {say("tin rims"), say("Rim"), say("Feel the rim first, and tape it.")},
    {say("food boxes"), say("Food traces"),
     say("Think what the container held: does anyone here react to it?")},
    {say("pegs"), say("Pegs"), say("Open pegs away from skin. Throw away a broken spring.")},
    {say("cloth near faces"), say("Cloth"),
     say("Never over a face or round a neck. Arms stay free.")},
    {say("touch"), say("Touch"), say("Ask or sign first. Stop when your child pulls away.")},
    {say("turning"), say("Turning"), say("Slowly, both ways. Stop if pale, giddy or sick.")},
    {say("moving about"), say("Clear floor"), say("Clear the floor first.")},
    {say("lifting"), say("Lifting"), say("Light things, two hands, close to the body.")},
    {say("noise"), say("Noise"), say("It can be loud. Stop when anyone covers their ears.")},
}};
static_assert(!words.back().caution.text().empty(), "every tag has its words");

const TagWords &of(catalogue::Tag tag)
{
    return words[static_cast<std::size_t>(tag)];
}

} // namespace

English tagThing(catalogue::Tag tag)
{
    return of(tag).thing;
}

English tagCaution(catalogue::Tag tag)
{
    return of(tag).caution;
}

English tagShort(catalogue::Tag tag)
{
    return of(tag).shortWords;
}

} // namespace lidlark::wording
