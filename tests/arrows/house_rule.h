#pragma once

#include "tests/arrows/source_file.h"

#include <set>
#include <string>
#include <vector>

namespace lidlark::arrows {

inline constexpr int longestFile = 300; ///< Lines. One more and the file holds two ideas.
inline constexpr int longishFile = 250; ///< Lines. From here on it is worth a look.

/// The files and folders at the top of the project, all of which must be there.
const std::set<std::string> &topLevelNames();

/// What stands at the top of the project and should not, and what should and does not. Names that
/// begin with a dot and build folders ("build", "build-…") are free.
std::vector<Complaint> wrongTopLevel(const std::set<std::string> &names);

int lengthOf(const SourceFile &file);

/// Names that say nothing: utils, manager, helper and their singulars.
std::vector<Complaint> emptyNames(const SourceFile &file);

/// A note of unfinished work that does not say why it waits: the word, a colon and at least four
/// words are wanted.
std::vector<Complaint> bareNotes(const SourceFile &file);

/// Looks that belong to mobile/design and are written elsewhere: hex colours and colours made from
/// numbers, fonts, and sizes in pixels or points.
std::vector<Complaint> strayLooks(const SourceFile &file);

} // namespace lidlark::arrows
