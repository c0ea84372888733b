#include "core/wording/kite_words.h"

namespace lidlark::wording {

Sentence kiteQuestion()
{
    return {say("What is your kite doing?"), {}};
}

Sentence kiteQuestionNow()
{
    return {say("What is your kite doing now?"), {}};
}

Sentence kiteLine(checkin::Kite kite)
{
    // In the order of checkin::Kite. The text is checkin.md 3.1.
    static constexpr std::array lines{
        say("Resting. Slow, floppy, or just quiet."), say("Flying steady. Comfy and ready."),
        say("Tugging and whirling. Wiggly, fizzy, fast."), say("Clouds in the way. That's fine."),
        say("Kite in the bag. That's fine.")};
    return {lines[static_cast<std::size_t>(kite)], {}};
}

Sentence handLine()
{
    return {say("I need a grown-up"), {}};
}

Sentence everyKite()
{
    return {say("Every kite does all of these."), {}};
}

std::array<TogetherCard, 5> togetherCards()
{
    return {{
        {{say("Me"), {}},
         {say("Your own breath out, slowly. Shoulders down. Sit lower than your child."), {}}},
        {{say("The room"), {}},
         {say("One less noise. One less thing on the table. Lid on what you are not using."), {}}},
        {{say("Us"), {}},
         {say("Say what you see: \"Your kite is really tugging.\" Then wait."), {}}},
        {{say("A small skill"), {}},
         {say("Slow pull together. Or four kite breaths: string out, string in."), {}}},
        {{say("If it grows"), {}}, {say("Stop the game. Stay near. Games come back later."), {}}},
    }};
}

} // namespace lidlark::wording
