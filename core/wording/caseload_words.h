#pragma once

#include "core/base/day.h"
#include "core/child/avoided.h"
#include "core/wording/sentence.h"

#include <string>
#include <vector>

namespace lidlark::wording {

/// What a box may need of the one who packs it (job.md T16): the columns of the board.
enum class BoxMatter { SafetyNote, AwaitingConfirmation, NeedsStock, ReviewDue };

/// "Needs stock".
Sentence boxMatter(BoxMatter matter);

/// "Revision 2, sent 25 January." A board of many boxes says dates, not "yesterday".
Sentence revisionSent(int number, Day sent);
/// "Received by Peigi, 26 January."
Sentence revisionReceived(const std::string &person, Day received);
/// "Nobody has received it yet."
Sentence notReceived();
/// "Two lists were written without knowing of each other. Send one more that says which holds."
Sentence twoLists();
/// "Still to be taken out: rubber bands, balloons." @param names of the things, joined.
Sentence stillToTakeOut(const std::string &names);
/// "All taken out."
Sentence allTakenOut();
/// "On the way: silicone loops, silk scarf."
Sentence onTheWay(const std::string &names);
/// "Asked for: short crayons."
Sentence askedFor(const std::string &names);
/// "Running low: straws."
Sentence runningLow(const std::string &names);
/// "Latex must stay away, says Marta, 13 January."
Sentence mustStayAway(child::Avoided what, const std::string &author, Day day);
/// "2 small pieces not found."
Sentence piecesNotFound(int pieces);
/// "Goal review: 29 March."
Sentence goalReview(Day day);
/// What a family reads beside a new lid list: "Morven wrote: Red skin under a band." @param author
/// empty: not known.
Sentence whyChanged(const std::string &author, const std::string &why);
/// "The list on the lid is out of date: revision 2 is in force since 25 January."
Sentence lidOutOfDate(int number, Day since);

/// "The box has a new lid list: revision 2."
Sentence newListSent(int number);
/// What a family does with what the new list has no more.
Sentence takeOutOfBox();

/// The six lines of the handing over: the parent does each, the one who packs looks on (job.md T17,
/// 1.2 "hand over").
std::vector<Sentence> coachingLines();

} // namespace lidlark::wording
