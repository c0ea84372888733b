#pragma once

#include "core/journal/seen.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace lidlark::play {

/// How a play ended. Stopping is normal, never a failure.
enum class Ending { AllBack, SomethingDifferent, Stopped };
inline constexpr EnumNames<Ending, 3> endingNames{{"all-back", "something-different", "stopped"}};

/// What an adult may have noticed (job.md G10): everyday phrases, never averaged.
enum class Phrase { AskedAgain, NeededHelp, FoundOwnWay };
inline constexpr EnumNames<Phrase, 3> phraseNames{{"asked-again", "needed-help", "found-own-way"}};

struct Started {
    PlayId play;
    ChildId child;
    ActivityId activity;
    int version = 1;
};

std::string fieldsOf(const Started &started);
std::string fieldsOfEnding(const PlayId &play, Ending ending);
std::string fieldsOfReaction(const PlayId &play, Phrase phrase);
std::string fieldsOfOffered(const ChildId &child, const ActivityId &activity);

std::optional<Started> readStarted(const journal::Event &event);

/// One activity done, or begun.
struct Play {
    PlayId id;
    ChildId child;
    ActivityId activity;
    int version = 1;
    std::string author;
    DayPart when;
    Instant startedAt;
    std::optional<Ending> ending; ///< Absent: nobody has said yet (scenario 6).
    std::string endedBy;
    std::vector<Phrase> phrases;
    bool operator==(const Play &) const = default;
};

/// @param events those of one play's subject, any order. An end never deletes a start, and a play
/// whose start is not here yet has no effect (events.md 2, 5).
std::optional<Play> foldPlay(std::span<const journal::Event> events, const journal::Seen &seen);

/// When an entry last stood in a menu. The day before the last is kept as well, because a menu
/// that has just been shown must not change itself: today's menu reads the last day before today.
struct Offered {
    Day last;
    std::optional<Day> before;

    /// The last day earlier than @p today.
    [[nodiscard]] std::optional<Day> beforeToday(Day today) const
    {
        return last < today ? std::optional(last) : before;
    }
    bool operator==(const Offered &) const = default;
};

std::optional<Offered> foldOffered(std::span<const journal::Event> events);

} // namespace lidlark::play
