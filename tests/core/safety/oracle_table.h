#pragma once

#include "core/catalogue/tag.h"
#include "core/child/home_sheet.h"

#include <optional>
#include <set>
#include <string>
#include <vector>

/// The table of activities.md 1.4 and its two facts about people, written down a second time for
/// tests. Shares no code with core/safety.
namespace oracle {

using namespace lidlark;
using child::Answer;
using Tags = std::set<std::string>;

/// One line of the table of activities.md 1.4, as far as a program reads it.
struct TableLine {
    const char *tag;
    bool hard;
    int floor; ///< 0: none.
    bool hiddenForUnderThree;
    bool hiddenForMouther;
    bool fromMovement; ///< Brought by what the body does, so that no swap takes it away.
};

inline const std::vector<TableLine> &table()
{
    static const std::vector<TableLine> lines{
        {"SMALL", true, 36, true, true, false},   {"BALLOON", true, 60, true, true, false},
        {"LATEX", true, 0, false, false, false},  {"ELASTIC", true, 60, true, true, false},
        {"BAND", true, 48, false, false, false},  {"CORD", true, 36, true, true, false},
        {"SHARP", true, 36, false, false, false}, {"COIN", true, 48, true, true, false},
        {"FOAM", true, 36, true, true, false},    {"FOIL", true, 36, true, true, false},
        {"STRAW", true, 48, true, true, false},   {"DOUGH", true, 24, false, true, false},
        {"WHEAT", true, 0, false, false, false},  {"STICKER", true, 30, false, true, false},
        {"PAPER", false, 0, false, false, false}, {"FORK", true, 30, false, false, false},
        {"PET", false, 0, false, false, false},   {"HYG", false, 0, false, false, false},
        {"SCENT", false, 0, false, false, false}, {"WATER", false, 0, false, false, false},
        {"BREATH", false, 0, false, false, true}, {"EDGE", false, 0, false, false, false},
        {"TRACE", false, 0, false, false, false}, {"PINCH", false, 0, false, false, false},
        {"FACE", false, 0, false, false, true},   {"TOUCH", false, 0, false, false, true},
        {"SPIN", false, 0, false, false, true},   {"TRIP", false, 0, false, false, true},
        {"LIFT", false, 0, false, false, true},   {"NOISE", false, 0, false, false, true}};
    return lines;
}

inline Tags tagsOf(catalogue::TagSet set)
{
    Tags tags;
    for (const auto &line : table()) {
        if (set.has(*catalogue::tagNames.parse(line.tag)))
            tags.insert(line.tag);
    }
    return tags;
}

/// "Under-three" and "Mouther" of one person.
struct Smallness {
    bool underThree = false;
    bool mouther = false;

    void join(Smallness other)
    {
        underThree = underThree || other.underThree;
        mouther = mouther || other.mouther;
    }
};

inline Smallness smallnessOf(std::optional<int> months, Answer mouths, bool pica, bool isChild)
{
    Smallness result;
    if (mouths == Answer::Yes || pica)
        result.mouther = true;
    if (!isChild)
        return result;
    if (!months) {
        result.underThree = true;
        result.mouther = result.mouther || mouths != Answer::No;
        return result;
    }
    result.underThree = *months <= 35;
    if (*months <= 23 || (*months <= 35 && mouths == Answer::Unanswered))
        result.mouther = true;
    return result;
}

} // namespace oracle
