#include "core/wording/tag_words.h"

#include <array>

namespace lidlark::wording {

namespace {

struct TagWords {
    std::string_view thing;
    std::string_view shortWords;
    std::string_view caution;
};

/// In the order of catalogue::Tag.
constexpr std::array<TagWords, catalogue::tagCount> words{{
    {"small parts", "Small parts", "Small parts: count them out and count them back."},
    {"balloons", "Balloon",
     "Only an adult pumps it up or handles it flat. Pick up every piece if it bursts."},
    {"latex", "Latex", "Made of latex: not in a home where anyone must avoid it."},
    {"rubber bands", "Rubber bands",
     "Never on a finger, a wrist or a neck. Pluck away from faces."},
    {"a stretchy band", "Stretchy band",
     "Look for nicks first. An adult holds it. Never near a face, a neck or a door handle."},
    {"cords", "Cord", "Never round a neck or a wrist. Straight back into the lid bag."},
    {"scissors", "Scissors", "Sitting down to cut. Closed, blades in the fist, when carried."},
    {"coins", "Coins",
     "Check the handful: a button battery can look like a coin. Count out and back."},
    {"foam", "Foam", "Hands wiped before they touch eyes or mouth. The can stays with you."},
    {"foil", "Foil", "Fold sharp edges in. Collect every scrap."},
    {"straws", "Straw", "Sitting the whole time, never walking with it. One straw, one child."},
    {"dough", "Dough", "Dough is for hands, not for mouths."},
    {"wheat", "Wheat", "Wheat in the dough. Wash hands and wipe the table after."},
    {"stickers", "Stickers", "Stickers stay out of mouths. Count them back."},
    {"paper", "Paper", "Paper pieces stay over 6 cm where anyone mouths things."},
    {"forks", "Fork", "A blunt table fork, sitting down."},
    {"salty dough", "Pets", "Salty dough can poison dogs and cats: lid on, up high."},
    {"things for one child only", "One child", "For this child only. Wash hands before and after."},
    {"strong smells", "Smell", "It smells. Stop if skin, eyes or breath do not like it."},
    {"water", "Water", "Stay beside the water. Empty it before anyone leaves, and dry the floor."},
    {"puffing games", "Breath", "At most five breaths or puffs, then rest. Stop if dizzy."},
    {"tin rims", "Rim", "Feel the rim first, and tape it."},
    {"food boxes", "Food traces", "Think what the container held: does anyone here react to it?"},
    {"pegs", "Pegs", "Open pegs away from skin. Throw away a broken spring."},
    {"cloth near faces", "Cloth", "Never over a face or round a neck. Arms stay free."},
    {"touch", "Touch", "Ask or sign first. Stop when your child pulls away."},
    {"turning", "Turning", "Slowly, both ways. Stop if pale, giddy or sick."},
    {"moving about", "Clear floor", "Clear the floor first."},
    {"lifting", "Lifting", "Light things, two hands, close to the body."},
    {"noise", "Noise", "It can be loud. Stop when anyone covers their ears."},
}};
static_assert(!words.back().caution.empty(), "every tag has its words");

const TagWords &of(catalogue::Tag tag)
{
    return words[static_cast<std::size_t>(tag)];
}

} // namespace

std::string_view tagThing(catalogue::Tag tag)
{
    return of(tag).thing;
}

std::string_view tagCaution(catalogue::Tag tag)
{
    return of(tag).caution;
}

std::string_view tagShort(catalogue::Tag tag)
{
    return of(tag).shortWords;
}

} // namespace lidlark::wording
