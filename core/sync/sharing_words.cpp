#include "core/sync/sharing_words.h"

#include "core/base/instant.h"
#include "core/base/part_of_day.h"
#include "core/wording/day_words.h"

namespace lidlark::sync {

using wording::inDigits;
using wording::say;
using wording::sayCounted;
using wording::Sentence;

namespace {

constexpr std::int64_t minutesOfDay = msPerDay / msPerMinute;
constexpr int daysInAWeek = 7;

} // namespace

Sentence sentenceFor(const SharingState &state, std::int64_t nowMs, int offsetMinutes)
{
    if (!state.inCrew || !state.agreed)
        return {say("On this phone only"), {}};
    if (state.waiting == 1)
        return {say("One note waits on this phone"), {}};
    if (state.waiting > 0)
        return {sayCounted("%1 notes wait on this phone"), {inDigits(state.waiting)}};
    if (!state.sharedMs)
        return {say("On this phone only so far"), {}};
    const DayPart then = dayPartAt(*state.sharedMs, offsetMinutes);
    const Day today = dayPartAt(nowMs, offsetMinutes).day;
    if (then.day == today) {
        const std::int64_t minute = (*state.sharedMs / msPerMinute) + offsetMinutes;
        const auto ofDay =
            static_cast<int>(((minute % minutesOfDay) + minutesOfDay) % minutesOfDay);
        return {say("Shared at %1"), {wording::TimeOfDay{ofDay}}};
    }
    if (then.day == today - 1)
        return {say("Shared yesterday"), {}};
    if (then.day < today && today - then.day < daysInAWeek)
        return {say("Shared %1"), {wording::onWeekdayWords(then.day)}};
    return {say("Shared on %1"), {wording::dateWords(then.day)}};
}

} // namespace lidlark::sync
