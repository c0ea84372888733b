#include "core/wording/catalogue_words.h"

#include <set>

namespace lidlark::wording {

std::optional<Sentence> missingFrom(const catalogue::Catalogue &catalogue)
{
    if (catalogue.activities().empty())
        return Sentence{say("The activities of Lidlark cannot be read, so nothing can be offered. "
                            "Install it again. What you wrote down is kept."),
                        {}};
    std::set<std::string> files;
    for (const catalogue::Problem &problem : catalogue.problems())
        files.insert(problem.file);
    if (files.empty())
        return std::nullopt;
    if (files.size() == 1)
        return Sentence{
            say("One page of the catalogue cannot be read and is left out: %1. All else "
                "is here."),
            {*files.begin()}};
    return Sentence{
        sayCounted("%1 pages of the catalogue cannot be read and are left out, %2 among them. "
                   "All else is here."),
        {withCapital(inWords(static_cast<int>(files.size()))), *files.begin()}};
}

} // namespace lidlark::wording
