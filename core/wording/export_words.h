#pragma once

#include "core/base/day.h"
#include "core/wording/sentence.h"

#include <string>
#include <vector>

namespace lidlark::wording {

/// One part of what stands beside an open copy: a heading and its lines.
struct ReadMePart {
    Sentence head;
    std::vector<Sentence> lines;
};

/// For whoever opens the folder, perhaps years later and without Lidlark: what is in it, what is
/// not, what stays with the clinic and why (job.md D6), and that it is not locked.
/// @param person who made it: theirs are the notes to oneself.
std::vector<ReadMePart> readMeOf(const std::vector<std::string> &children,
                                 const std::string &person, Day made);

/// The parts in English, as a text file: lines end as on every system (CRLF).
std::string readMeText(const std::vector<ReadMePart> &parts);

} // namespace lidlark::wording
