#pragma once

#include "tests/arrows/arrow_table.h"
#include "tests/arrows/mention.h"
#include "tests/arrows/source_file.h"

#include <set>
#include <string>
#include <vector>

namespace lidlark::arrows {

/// Every arrow of @p file that points the wrong way.
/// @param known the paths of all files of the project, by which names are understood (own_file.h).
std::vector<Complaint> wrongArrows(const SourceFile &file, const std::set<std::string> &known,
                                   const ArrowTable &table = arrowsOfTheHouse());

} // namespace lidlark::arrows
