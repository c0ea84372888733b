#include "core/wording/skill_words.h"

#include <array>

namespace lidlark::wording {

Sentence skillWords(catalogue::Skill skill)
{
    // In the order of catalogue::Skill.
    static constexpr std::array<English, catalogue::skillCount> words{
        say("finger-and-thumb pick-up"),
        say("three-finger hold for drawing tools"),
        say("two hands working as a team"),
        say("moving things inside one hand"),
        say("reaching across the middle"),
        say("working out a new movement"),
        say("feeling push and pull in muscles"),
        say("learning by touch"),
        say("movement and balance sense"),
        say("mouth and breath play"),
        say("eyes guiding hands"),
        say("strong hands"),
        say("not too hard, not too soft"),
        say("steady body"),
        say("one finger at a time"),
        say("noticing and matching by eye"),
        say("keeping a beat"),
        say("holding on to an idea"),
        say("using a tool"),
        say("doing it together"),
        say("knowing where my body is")};
    return {words[static_cast<std::size_t>(skill)], {}};
}

Sentence lifeAreaWords(catalogue::LifeArea area)
{
    // In the order of catalogue::LifeArea.
    static constexpr std::array<English, catalogue::lifeAreaCount> words{
        say("getting dressed"),     say("spoon, fork and cup"), say("drawing and writing"),
        say("cutting and making"),  say("opening things"),      say("playing with others"),
        say("getting ready to go"), say("settling down")};
    return {words[static_cast<std::size_t>(area)], {}};
}

} // namespace lidlark::wording
