#pragma once

#include "core/base/digest.h"
#include "core/base/id.h"
#include "core/base/instant.h"
#include "core/base/part_of_day.h"
#include "core/base/result.h"
#include "core/journal/lane.h"

#include <string>

namespace lidlark::journal {

/// Every kind of fact that can be written. A received event picks a function by its kind; it never
/// names a table or a column.
enum class Kind {
    Met,           ///< What this device holds of the lane (events.md 2, "seen").
    Child,         ///< box: whose box it is.
    Member,        ///< box: a device was let into the crew.
    Revision,      ///< box: the lid list.
    Outcome,       ///< box: what came of one item in one play.
    Exception,     ///< box: used up, lost ... outside a play.
    Found,         ///< box: a lost piece turned up.
    Count,         ///< box: a full count of one item.
    FloorChecked,  ///< box: the floor was looked over for one loss.
    Opened,        ///< box: a perishable was opened.
    LeftOpen,      ///< box: a perishable was found left open.
    Checked,       ///< box: an item was looked over, and is good.
    Limit,         ///< box: how long a perishable keeps once opened, as this family says.
    Hygiene,       ///< box: an item was in a mouth, was washed, or was replaced.
    TakenOut,      ///< box: an item was taken out of the house.
    Place,         ///< box: where the box is.
    Request,       ///< box: an item was asked for, or the request went a step on.
    CountedIn,     ///< box: what was sent has arrived and lies in the box.
    Answer,        ///< box: an answer to a question about an item.
    Fact,          ///< safety: one statement of the home sheet.
    Permission,    ///< safety: the therapist's yes, or its withdrawal.
    PlayStarted,   ///< home
    PlayEnded,     ///< home: all back, something different, or stopped.
    Reaction,      ///< home: what was noticed.
    Offered,       ///< home: last day an entry stood in a menu; never shown, never shared.
    CheckIn,       ///< check-ins
    Goal,          ///< goals
    Grading,       ///< home: how a child played an activity last, easier or harder.
    GradingPin,    ///< box: how the therapist asks for it to be played.
    Planned,       ///< home: what an adult has said about one day of the week plan.
    Reads,         ///< home: the language in which a person reads.
    OurWay,        ///< home: a family's own way of playing an activity.
    Note,          ///< notes: a note to oneself.
    NoteSent,      ///< notes: a note may go to the therapist.
    TakenBack,     ///< any lane: an event of the same person and day counts no more.
    MemberRemoved, ///< box: a device of the crew was removed, or left.
    Epoch,         ///< box: a new key for one of the lanes.
    Erased,        ///< any lane: what was said up to a day, or of one subject, is gone.
    GoalRated,     ///< goals: somebody has said which level a goal has reached.
    VideoPlan,     ///< box: what a video session will play (core/workbench).
    HaveReady,     ///< box: whether one thing of such a plan is at hand.
    Supply,        ///< clinic: how an item is bought and what lies on the shelf.
    Design,        ///< clinic: what belongs in a kind of box.
    Build,         ///< clinic: boxes that are packed together.
    PackMark,      ///< clinic: one thing of one box was packed, or looked over again.
    BoxStatus,     ///< clinic: a box was issued, came back, was cleaned, or is used no more.
    OwnActivity,   ///< clinic: an activity of the therapist's own.
    OwnItem,       ///< clinic: a thing of the therapist's own, or one that measures otherwise.
    OwnEntry,      ///< box: an own thing or activity, as this box's phones are to know it.
    Sharing        ///< home: whether what is played is copied for the therapist.
};

inline constexpr EnumNames<Kind, 50> kindNames{
    {"met",       "child",    "member",        "revision",     "outcome",      "exception",
     "found",     "count",    "floor-checked", "opened",       "left-open",    "checked",
     "limit",     "hygiene",  "taken-out",     "place",        "request",      "counted-in",
     "answer",    "fact",     "permission",    "play-started", "play-ended",   "reaction",
     "offered",   "check-in", "goal",          "grading",      "grading-pin",  "planned",
     "reads",     "our-way",  "note",          "note-sent",    "taken-back",   "member-removed",
     "epoch",     "erased",   "goal-rated",    "video-plan",   "have-ready",   "supply",
     "design",    "build",    "pack-mark",     "box-status",   "own-activity", "own-item",
     "own-entry", "sharing"}};

/// Something that people did. Written once, never changed (events.md 2).
struct Event {
    Lane lane;
    DeviceId device;
    std::uint64_t counter = 0; ///< Rises by one per device and lane, from 1.
    Instant instant;
    DayPart when;          ///< Decided by the author's device; nobody works it out again.
    int offsetMinutes = 0; ///< Local time minus UTC on the author's device.
    std::string author;    ///< The person's alias.
    Kind kind = Kind::Met;
    std::string fields; ///< Canonical JSON: keys sorted, no white space, whole numbers.

    bool operator==(const Event &) const = default;
};

/// The whole event as canonical JSON: what the identity is the hash of.
std::string canonicalText(const Event &event);
/// BLAKE2b of the canonical text (events.md 2: identity = hash of all of it), in hexadecimal.
std::string identityOf(const Event &event);

/// Reads canonical text back. @returns Unreadable with the field's name for anything else,
/// also for text that is valid JSON but not in canonical form.
Result<Event> eventFromText(const std::string &text);

/// What the event is about within its lane: the state of one subject is a fold of the events that
/// name it, and of nothing else. "item:eyes", "play:3f..", "fact:p-mirren/mouths", "place".
std::string subjectOf(const Event &event);

} // namespace lidlark::journal
