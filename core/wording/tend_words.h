#pragma once

#include "core/base/day.h"
#include "core/wording/pack_words.h"
#include "core/workbench/hygiene.h"

#include <string>

namespace lidlark::wording {

/// "With Fin since Monday.", "Came back yesterday.", "Used no more since 4 January."
Sentence standingWords(const workbench::BoxStatus &status, Day today);

/// Why a returned box may not go to another child, naming the items: "First clean: pegs, scissors.
/// First replace: dough." @returns nothing where all is done.
std::optional<Sentence> firstTend(const std::vector<workbench::StillToDo> &left,
                                  const ItemNames &names);

/// "Clean", "Replace".
Sentence careWord(workbench::Care care);
/// "Soap and water", "Wiped", "Washing machine".
Sentence cleanedHowWords(workbench::CleanedHow how);
/// "Soap and water. Callum, today."
Sentence tendedWords(const workbench::Tended &tended, Day today);

/// What a recall found, by its number: "Boxes with lot P-7: 3. ...", "No box holds lot P-7 ..."
Sentence recallWords(int boxes, const std::string &lot);
/// Where one of them is: "With Fin, since 4 January.", "Came back 4 January.", "Packed for Fin."
Sentence recallPlace(workbench::Standing standing, const std::string &whose, Day since, Day today);

} // namespace lidlark::wording
