#pragma once

#include "core/wording/sentence.h"
#include "core/workbench/build_problem.h"
#include "core/workbench/design_difference.h"
#include "core/workbench/item_use.h"
#include "core/workbench/one_more_box.h"

#include <functional>
#include <string_view>

namespace lidlark::wording {

/// How an item is called in the middle of a sentence.
using ItemWords = std::function<Argument(const ItemId &)>;

/// What is to be put right, where, and how: "Clothes pegs from Harbour Stores: a pack holds 1 to
/// 100000 pieces."
Sentence buildProblemSentence(const workbench::BuildProblem &problem);

/// "Silicone loops instead of rubber bands." (job.md T3)
Sentence differenceSentence(const workbench::DesignDifference &difference, const ItemWords &names);

/// "One box more: the till asks for £25.50 more. What lies in the box is worth £6.99."
/// (job.md 2.8)
Sentence oneMoreSentence(const workbench::OneMoreBox &more, std::string_view currency);

/// The same of several boxes. @param alike what lies in one lies in all of them.
Sentence moreBoxesSentence(const workbench::OneMoreBox &more, int boxes, bool alike,
                           std::string_view currency);

/// How much play an item brings to a box: "In 7 plays. 5 of them need it.", "This item has almost
/// nothing to do in this box: 1 play takes it." Empty words for what the catalogue does not know.
Sentence itemPlaySentence(const workbench::ItemPlay &play);

/// "Clothes pegs, packs to buy: 7 instead of 6."
Sentence changedLineSentence(const workbench::ChangedLine &line, const ItemWords &names);

} // namespace lidlark::wording
