#include "core/workbench/standing.h"

#include <algorithm>
#include <tuple>

namespace lidlark::workbench {

std::vector<const journal::Event *> standingOf(const std::vector<const journal::Event *> &said,
                                               const journal::Seen &seen)
{
    std::vector<const journal::Event *> standing;
    for (const journal::Event *event : said) {
        const bool replaced = std::ranges::any_of(
            said, [&](const journal::Event *other) { return seen.saw(*other, *event); });
        if (!replaced)
            standing.push_back(event);
    }
    return standing;
}

bool writtenLater(const journal::Event &a, const journal::Event &b)
{
    return std::tie(a.instant, a.device, a.counter, a.fields) >
           std::tie(b.instant, b.device, b.counter, b.fields);
}

} // namespace lidlark::workbench
