#pragma once

#include "core/base/day.h"
#include "core/wording/sentence.h"

#include <string>
#include <vector>

namespace lidlark::wording {

/// "4 January 2027": on paper a day needs its year.
Sentence fullDateWords(Day day);
/// "Fin's box".
Sentence boxOf(const std::string &child);
/// "Lid list R2, from 25 January 2027": what makes an old print known as old.
Sentence lidListLine(int revision, Day issued);
/// "Box K7-4M".
Sentence boxCodeLine(const std::string &code);
/// "Lacing card, lace": names on one line. @param names at least one.
Sentence inList(std::vector<Argument> names);
/// "Card 1 of 2": a lid list of more lines than one card holds.
Sentence cardOf(int card, int cards);
/// "Count everything home. The lid comes last."
Sentence countHomeLine();
/// Over the label words of what is in a box: "Words that go with this box", and that they stay.
Sentence boxLabelTitle();
Sentence boxLabelNote();
/// "Not in this home: rubber bands, balloons.": on the list, and kept out for an allergy.
Sentence keptOutLine(std::vector<Argument> names);
/// Over the contact of the service on a label: "Found it, or a question?"
Sentence contactLead();

/// "Away from home", and what that page needs: "Nothing from the box is needed. Quiet ones first."
Sentence travelTitle();
Sentence travelNote();
/// For whom the page was made: "For Fin, with everybody of this home there. Made on 11 January
/// 2027: print it again when somebody new lives here, or anything else changes."
Sentence travelMadeFor(const std::string &child, Day day);
/// "about 7 min": out, play and back.
Sentence aboutMinutes(int minutes);
/// Nothing may be offered: "There is nothing on this list now. The app says why."
Sentence nothingToTravelWith();

/// "This lid says R1? Print it anew: R2 is in force since 25 January 2027."
Sentence olderLids(int revision, Day issued);

} // namespace lidlark::wording
