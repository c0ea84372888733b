#pragma once

#include "core/base/day.h"
#include "core/catalogue/activity.h"
#include "core/play/play_events.h"
#include "core/wording/sentence.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace lidlark::wording {

/// What a progress summary says (job.md T12). It never says that anything works, gives no
/// percentage, and nothing about days without play.

/// "Fin: how things stand".
Sentence summaryTitle(const std::string &child);
/// "From 16 November 2026 to 11 January 2027".
Sentence summaryTime(Day since, Day day);
/// Headings: "What was played", "Goals, in the family's words", "The box", "What we do not know".
Sentence summaryPlayed();
Sentence summaryGoals();
Sentence summaryBox();
Sentence summaryUnknown();

/// "Slow Oars: asked for it again." @param activity null: the catalogue has no such entry, and its
/// id stands there.
Sentence playedWords(const catalogue::Activity *activity, const ActivityId &id,
                     std::span<const play::Phrase> noticed);

/// Nothing of the home is on the page: "Not told here. It is the family's own."
Sentence playsNotTold();
/// It may be told, and nothing is there: "Nothing is written down."
Sentence nothingWritten();
/// Some found no room: "And others."
Sentence andOthers();
/// Beside the level last agreed: "now".
Sentence levelNow();
/// "Agreed %1. Looked at again %2."
Sentence goalDates(Day agreed, Day review);
Sentence noGoals();

/// "Complete, by what was noted.", "Running low: ...", "None left: ...".
Sentence boxComplete();
Sentence boxLow(std::vector<Argument> names);
Sentence boxNone(std::vector<Argument> names);
Sentence boxAsked(std::vector<Argument> names);
Sentence boxOpen(std::vector<Argument> names);
Sentence boxPieceMissing();
/// "All of it was last counted on or after %1."; without a day: "Not all of it was ever counted."
Sentence boxCounted(std::optional<Day> day);

/// What the page cannot say, always: what was played and not written down; how it felt to the
/// child; whether play is the reason for any change.
std::vector<Sentence> whatNobodyKnows(const std::string &child, bool playsTold);

/// "Nothing on this page grades anybody."
Sentence nothingGraded();
/// "Told with the yes of Ruth, 11 January 2027."
Sentence toldWith(const std::string &person, Day day);
/// On a therapist's page: "What was played is told as far as the family shares it."
Sentence toldAsShared();

} // namespace lidlark::wording
