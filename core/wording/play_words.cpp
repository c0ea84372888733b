#include "core/wording/play_words.h"

#include <array>

namespace lidlark::wording {

namespace {

/// In the order of checkin::Kite.
struct KiteWords {
    English name;
    English note;
    English advice;
};

constexpr std::array<KiteWords, 5> kites{{
    {say("Resting"), say("slow, floppy, or just quiet"),
     say("Quiet can be just quiet. If your child seems unwell or unusually hard to wake, skip play "
         "and "
         "get advice.")},
    {say("Flying steady"), say("comfy and ready"),
     say("Follow your child's idea if it is better than ours.")},
    {say("Tugging and whirling"), say("wiggly, fizzy, fast"),
     say("Busy can be happy. Start beside, use few words, go slower than feels natural.")},
    {say("Clouds"), say("that's fine"),
     say("Shall we look together: floppy, steady or wiggly? Or just start.")},
    {say("In the bag"), say("that's fine"), say("Fine. You can offer it again another day.")},
}};

const KiteWords &of(checkin::Kite kite)
{
    return kites[static_cast<std::size_t>(kite)];
}

/// In the order of checkin::Kite. Whole sentences, since other languages build them otherwise.
struct PairWords {
    English was;
    English isNow;
    English isStill;
};

constexpr std::array<PairWords, 5> pairs{{
    {say("Your kite was resting."), say("Now it is resting."), say("It is still resting.")},
    {say("Your kite was steady."), say("Now it is steady."), say("It is still steady.")},
    {say("Your kite was tugging."), say("Now it is tugging."), say("It is still tugging.")},
    {say("There were clouds in the way."), say("Now there are clouds in the way."),
     say("There are still clouds in the way.")},
    {say("Your kite was in the bag."), say("Now it is in the bag."),
     say("It is still in the bag.")},
}};

} // namespace

Sentence exceptionWord(box::ExceptionKind kind)
{
    static constexpr std::array words{say("used up"), say("lost"), say("broken"), say("dried out"),
                                      say("still in use")};
    return {words[static_cast<std::size_t>(kind)], {}};
}

Sentence phraseWords(play::Phrase phrase)
{
    static constexpr std::array words{say("Asked for it again"), say("Needed help"),
                                      say("Found own way")};
    return {words[static_cast<std::size_t>(phrase)], {}};
}

Sentence stoppedEarly()
{
    return {say("Stopped early"), {}};
}

Sentence allBack()
{
    return {say("All back"), {}};
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
    return {say("Thank you for showing me."), {}};
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
