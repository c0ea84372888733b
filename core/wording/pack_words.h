#pragma once

#include "core/wording/sentence.h"
#include "core/workbench/readiness.h"

#include <functional>
#include <span>
#include <vector>

namespace lidlark::wording {

/// How an item is called: "rubber bands".
using ItemNames = std::function<Argument(const ItemId &)>;

/// "Left-handed scissors only.", "No latex in this box.", "Silicone loops, not rubber bands. For an
/// allergy.": what whoever packs a box must know of it, with its reason.
Sentence callOutWords(const workbench::CallOut &call, const ItemNames &names);

/// One line of all that is called out of a box.
struct CalledLine {
    Sentence words;
    bool guards = false; ///< It is about what somebody must not have.
};

/// All of it, so that a reason that several things share is told once, before them.
std::vector<CalledLine> callOutLines(std::span<const workbench::CallOut> calls,
                                     const ItemNames &names);

/// "for an allergy", as a sentence of its own.
Sentence whyDiffers(const workbench::Departure &because);

/// "Ready.", "4 of 14 lines are in.", "A second person looks it over: 3 of 14 done."
Sentence readyWords(const workbench::PackBox &box);

/// How far one line is: "In, says Morven.", "Looked over by Callum.", "These are for the other
/// hand. Put them back." Empty words for one that is still open.
Sentence lineWords(const workbench::PackLine &line);

/// "Two people packed this. See that it is not in twice."
Sentence perhapsTwiceWords();

/// "K1 needs the pair for the right hand. Put these back.": the wrong one was in hand.
Sentence otherHandWords(const std::string &code, workbench::Hand wanted);

} // namespace lidlark::wording
