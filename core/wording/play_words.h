#pragma once

#include "core/box/exceptions.h"
#include "core/checkin/kite.h"
#include "core/play/play_events.h"
#include "core/wording/sentence.h"

namespace lidlark::wording {

/// "used up", "lost" ...: five words of equal weight.
Sentence exceptionWord(box::ExceptionKind kind);
/// "Asked for it again", "Needed help", "Found own way".
Sentence phraseWords(play::Phrase phrase);
/// "Stopped early", "All back": how a play ended.
Sentence stoppedEarly();
Sentence allBack();
/// What a child hears for each kite (checkin.md 3.1), and what stands on its tile.
Sentence kiteName(checkin::Kite kite);
Sentence kiteNote(checkin::Kite kite);
/// "Thank you for showing me.": the same for all five.
Sentence kiteThanks();
/// Two kites side by side, said without a judgement (checkin.md 7): "Your kite was tugging.", then
/// "Now it is steady." or, where nothing changed, "It is still tugging."
Sentence kiteWas(checkin::Kite before);
Sentence kiteIsNow(checkin::Kite before, checkin::Kite now);
/// The line for the adult beside the offers (checkin.md 4); empty English where there is none.
Sentence kiteAdvice(checkin::Kite kite);

} // namespace lidlark::wording
