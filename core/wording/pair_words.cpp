#include "core/wording/pair_words.h"

namespace lidlark::wording {

std::vector<Sentence> pairSummary(const checkin::PairCounts &pairs, checkin::ShownBy by,
                                  const std::string &childAlias)
{
    if (pairs.total() < checkin::pairsBeforeSummary)
        return {};
    const Number total = inDigits(pairs.total());
    std::vector<Sentence> lines;
    if (by == checkin::ShownBy::Child)
        lines.push_back({sayCounted("%1 times %2 told us both."), {total, childAlias}});
    else
        lines.push_back({sayCounted("%1 times an adult guessed both."), {total}});
    lines.push_back({say("Towards steady: %1."), {inDigits(pairs.towards)}});
    lines.push_back({say("No change: %1."), {inDigits(pairs.same)}});
    lines.push_back({say("Away from steady: %1."), {inDigits(pairs.away)}});
    if (pairs.past > 0)
        lines.push_back({say("Past steady to the other side: %1."), {inDigits(pairs.past)}});
    lines.push_back(
        {say("That is a small number, and other things happen in five minutes too."), {}});
    return lines;
}

} // namespace lidlark::wording
