#pragma once

#include "core/crypto/bytes.h"
#include "core/journal/seen.h"
#include "core/play/play_events.h"

#include <optional>
#include <span>
#include <string>

namespace lidlark::play {

/// Makes the ids of copies from those of plays. It never leaves the home's lane, so that nobody who
/// reads a copy can find the play among the outcomes of the box.
using CopyKey = crypto::Secret<32>;

/// A home's word on whether what is played with one child is copied for the therapist (job.md 1.4,
/// D3). Nothing said is a no.
struct Sharing {
    bool yes = false;
    std::string author; ///< Alias of who said so.
    Day day;
    Instant since; ///< What began before it is not copied.
    CopyKey key;   ///< Only with a yes.
};

std::string fieldsOfSharing(const ChildId &child, const CopyKey &key);
std::string fieldsOfNotSharing(const ChildId &child);

/// A register of the child, home lane. Where two have said something without knowing of each other,
/// it is yes only if both said yes: it loosens, so the careful word holds (as events.md 8.3).
/// @returns nothing where nobody has said anything.
std::optional<Sharing> foldSharing(std::span<const journal::Event> events,
                                   const journal::Seen &seen);

/// What a copy of one play tells: no time of day, nothing of how it ended or who played.
struct Copy {
    PlayId id; ///< Of the copy: a keyed hash (RFC 7693) of the play's, the same on every phone.
    ChildId child;
    ActivityId activity;
    int version = 1;
    DayPart when;
    std::vector<Phrase> phrases;
};

/// The copy of a play; nothing where there is to be none: nobody has said yes, it began before
/// that, it was stopped early, or nobody has said that it ended.
std::optional<Copy> copyOf(const Play &play, const std::optional<Sharing> &sharing);

} // namespace lidlark::play
