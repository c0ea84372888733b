#include "core/wording/kite_words.h"

namespace lidlark::wording {

Sentence kiteQuestion()
{
    return {"What is your kite doing?", {}};
}

Sentence kiteQuestionNow()
{
    return {"What is your kite doing now?", {}};
}

Sentence kiteLine(checkin::Kite kite)
{
    // In the order of checkin::Kite. The text is checkin.md 3.1.
    static constexpr std::array lines{
        "Resting. Slow, floppy, or just quiet.", "Flying steady. Comfy and ready.",
        "Tugging and whirling. Wiggly, fizzy, fast.", "Clouds in the way. That's fine.",
        "Kite in the bag. That's fine."};
    return {lines[static_cast<std::size_t>(kite)], {}};
}

Sentence handLine()
{
    return {"I need a grown-up", {}};
}

Sentence everyKite()
{
    return {"Every kite does all of these.", {}};
}

std::array<TogetherCard, 5> togetherCards()
{
    return {{
        {{"Me", {}},
         {"Your own breath out, slowly. Shoulders down. Sit lower than your child.", {}}},
        {{"The room", {}},
         {"One less noise. One less thing on the table. Lid on what you are not using.", {}}},
        {{"Us", {}}, {"Say what you see: \"Your kite is really tugging.\" Then wait.", {}}},
        {{"A small skill", {}},
         {"Slow pull together. Or four kite breaths: string out, string in.", {}}},
        {{"If it grows", {}}, {"Stop the game. Stay near. Games come back later.", {}}},
    }};
}

} // namespace lidlark::wording
