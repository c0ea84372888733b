#include "core/catalogue/check_gradings.h"

#include "core/catalogue/list_path.h"

#include <set>

namespace lidlark::catalogue {

namespace {

/// How a child played it last is remembered by the lever.
void checkLevers(const std::vector<Grading> &lines, const char *field, Findings &findings)
{
    std::set<Lever> seen;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (!seen.insert(lines[i].lever).second)
            findings.addAt(lineOf(field, i, "lever"), "is listed twice");
    }
}

/// Whether two facts of one kind stand the right way round.
bool isEasier(const GradingFact &easier, const GradingFact &harder)
{
    return moreIsEasier(easier.kind) ? easier.low > harder.low : easier.low < harder.low;
}

} // namespace

void checkGradings(const Activity &activity, Findings &findings)
{
    checkLevers(activity.easier, "easier", findings);
    checkLevers(activity.harder, "harder", findings);
    for (const Grading &easier : activity.easier) {
        for (std::size_t i = 0; i < activity.harder.size(); ++i) {
            const auto &harder = activity.harder[i].fact;
            if (easier.fact && harder && easier.fact->kind == harder->kind &&
                !isEasier(*easier.fact, *harder))
                findings.addAt(lineOf("harder", i, "fact"),
                               "is no harder than what a line for easier says");
        }
    }
}

} // namespace lidlark::catalogue
