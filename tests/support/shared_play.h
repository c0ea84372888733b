#pragma once

#include "core/journal/lane_home.h"
#include "core/play/play_events.h"
#include "core/store/box_repository.h"
#include "core/store/recording.h"
#include "core/usecase/workplace.h"

namespace lidlark::test {

/// Takes in the copy of a play on @p when, as a phone of the child's home would have written it:
/// its @p number th event. @param noticed the next one, where somebody noticed something.
inline bool takeSharedPlay(usecase::Workplace &therapist, const std::string &child, DayPart when,
                           const char *activity, std::uint64_t number,
                           std::optional<play::Phrase> noticed = {})
{
    const PlayId id{child + std::to_string(number)};
    const auto box = store::BoxRepository(therapist.database).boxOf(child);
    const ChildId who = box ? box->child : ChildId{"c-" + child};
    journal::Event event{journal::sharedPlaysOf("h-" + child),
                         {"d-of-" + child},
                         number,
                         {firstMomentMs(when, 0), 0},
                         when,
                         0,
                         "",
                         journal::Kind::PlayStarted,
                         play::fieldsOf(play::Started{id, who, {activity}, 1})};
    auto recording = store::Recording::begin(therapist.database, therapist.device, therapist.clock);
    bool done = recording && recording->keep(event).ok();
    if (noticed) {
        event.counter = number + 1;
        event.kind = journal::Kind::Reaction;
        event.fields = play::fieldsOfReaction(id, *noticed);
        done = done && recording->keep(event).ok();
    }
    return done && recording->commit().ok();
}

} // namespace lidlark::test
