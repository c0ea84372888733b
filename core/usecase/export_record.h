#pragma once

#include "core/usecase/open_table.h"
#include "core/usecase/whole_folder.h"
#include "core/usecase/workplace.h"

#include <cstddef>
#include <string>
#include <vector>

namespace lidlark::usecase {

/// All that this phone holds about a family, for whoever has no Lidlark (job.md D6).
struct OpenRecord {
    Day made;
    std::string person; ///< Who writes on the phone it was made on.
    store::Role role = store::Role::Parent;
    std::vector<std::string> children;
    std::vector<OpenTable> tables;

    [[nodiscard]] std::size_t rows() const; ///< Of all tables.
};

/// @param child alias; empty: every child with a box in this store. A therapist who hands a family
/// its record names the child: then nothing of another family is in it.
/// Errors: NotFound (child), NotAllowed (a guest: the record is the family's), ClockUnset.
Result<OpenRecord> openRecord(Workplace &workplace, const std::string &child);

/// "record.json" with all tables, grouped, and for each table that is not empty one for a
/// spreadsheet, "lid-list.csv". @param about a text for whoever opens the folder: "read-me.txt".
std::vector<NamedFile> filesOf(const OpenRecord &record, const std::string &about);

} // namespace lidlark::usecase
