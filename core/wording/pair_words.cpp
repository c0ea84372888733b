#include "core/wording/pair_words.h"

namespace lidlark::wording {

std::vector<Sentence> pairSummary(const checkin::PairCounts &pairs, checkin::ShownBy by,
                                  const std::string &childAlias)
{
    if (pairs.total() < checkin::pairsBeforeSummary)
        return {};
    const std::string total = std::to_string(pairs.total());
    std::vector<Sentence> lines;
    if (by == checkin::ShownBy::Child)
        lines.push_back({"%1 times %2 told us both.", {total, childAlias}});
    else
        lines.push_back({"%1 times an adult guessed both.", {total}});
    lines.push_back({"Towards steady: %1.", {std::to_string(pairs.towards)}});
    lines.push_back({"No change: %1.", {std::to_string(pairs.same)}});
    lines.push_back({"Away from steady: %1.", {std::to_string(pairs.away)}});
    if (pairs.past > 0)
        lines.push_back({"Past steady to the other side: %1.", {std::to_string(pairs.past)}});
    lines.push_back({"That is a small number, and other things happen in five minutes too.", {}});
    return lines;
}

} // namespace lidlark::wording
