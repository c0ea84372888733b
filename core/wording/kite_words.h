#pragma once

#include "core/checkin/kite.h"
#include "core/wording/sentence.h"

#include <array>

namespace lidlark::wording {

/// What the kite's screen says to the child, aloud and in writing: at most eight words a line
/// (checkin.md 3.1).

/// "What is your kite doing?"
Sentence kiteQuestion();
/// "What is your kite doing now?", after play.
Sentence kiteQuestionNow();
/// The whole line of a picture, as it is spoken: "Flying steady. Comfy and ready."
Sentence kiteLine(checkin::Kite kite);
/// "I need a grown-up": the hand.
Sentence handLine();
/// "Every kite does all of these.": no answer is the good one.
Sentence everyKite();

/// One step of the card for the adult (checkin.md 5).
struct TogetherCard {
    Sentence head;
    Sentence line; ///< At most 25 words.
};
/// Me, the room, us, a small skill, if it grows: in this order.
std::array<TogetherCard, 5> togetherCards();

} // namespace lidlark::wording
