#include "core/wording/play_words.h"

#include <array>

namespace lidlark::wording {

namespace {

/// In the order of checkin::Kite.
struct KiteWords {
    const char *name;
    const char *note;
    const char *advice;
};

constexpr std::array<KiteWords, 5> kites{{
    {"Resting", "slow, floppy, or just quiet",
     "Quiet can be just quiet. If your child seems unwell or unusually hard to wake, skip play and "
     "get advice."},
    {"Flying steady", "comfy and ready", "Follow your child's idea if it is better than ours."},
    {"Tugging and whirling", "wiggly, fizzy, fast",
     "Busy can be happy. Start beside, use few words, go slower than feels natural."},
    {"Clouds", "that's fine", "Shall we look together: floppy, steady or wiggly? Or just start."},
    {"In the bag", "that's fine", "Fine. You can offer it again another day."},
}};

const KiteWords &of(checkin::Kite kite)
{
    return kites[static_cast<std::size_t>(kite)];
}

/// In the order of checkin::Kite. Whole sentences, since other languages build them otherwise.
struct PairWords {
    const char *was;
    const char *isNow;
    const char *isStill;
};

constexpr std::array<PairWords, 5> pairs{{
    {"Your kite was resting.", "Now it is resting.", "It is still resting."},
    {"Your kite was steady.", "Now it is steady.", "It is still steady."},
    {"Your kite was tugging.", "Now it is tugging.", "It is still tugging."},
    {"There were clouds in the way.", "Now there are clouds in the way.",
     "There are still clouds in the way."},
    {"Your kite was in the bag.", "Now it is in the bag.", "It is still in the bag."},
}};

} // namespace

Sentence exceptionWord(box::ExceptionKind kind)
{
    static constexpr std::array words{"used up", "lost", "broken", "dried out", "still in use"};
    return {words[static_cast<std::size_t>(kind)], {}};
}

Sentence phraseWords(play::Phrase phrase)
{
    static constexpr std::array words{"Asked for it again", "Needed help", "Found own way"};
    return {words[static_cast<std::size_t>(phrase)], {}};
}

Sentence kiteName(checkin::Kite kite)
{
    return {of(kite).name, {}};
}

Sentence kiteNote(checkin::Kite kite)
{
    return {of(kite).note, {}};
}

Sentence kiteThanks()
{
    return {"Thank you for showing me.", {}};
}

Sentence kiteWas(checkin::Kite before)
{
    return {pairs[static_cast<std::size_t>(before)].was, {}};
}

Sentence kiteIsNow(checkin::Kite before, checkin::Kite now)
{
    const PairWords &words = pairs[static_cast<std::size_t>(now)];
    return {before == now ? words.isStill : words.isNow, {}};
}

Sentence kiteAdvice(checkin::Kite kite)
{
    return {of(kite).advice, {}};
}

} // namespace lidlark::wording
