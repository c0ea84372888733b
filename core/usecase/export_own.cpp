#include "core/usecase/export_tables.h"
#include "core/usecase/own_catalogue.h"

namespace lidlark::usecase {

namespace {

std::string_view standingOf(const workbench::OwnEntry &entry)
{
    if (entry.unsettled)
        return "the therapist is to say which";
    return entry.withdrawn ? "withdrawn" : "in force";
}

} // namespace

Tables ownTables(const ExportSource &source)
{
    OpenTable table{"the box",
                    "written by the therapist",
                    {"child", "what", "name", "version", "how it stands", "written by", "file"},
                    {}};
    for (const store::BoxRow &box : source.boxes) {
        const auto entries = ownEntriesOf(source.workplace, box.id);
        if (!entries)
            return entries.error();
        for (const workbench::OwnEntry &entry : *entries) {
            const std::string name = entry.sort == workbench::OwnSort::Item
                                         ? source.item({entry.id})
                                         : source.activity({entry.id});
            table.add({box.alias, workbench::ownSortNames.of(entry.sort), name, entry.known.version,
                       standingOf(entry), entry.known.by, entry.known.text});
        }
    }
    return std::vector<OpenTable>{std::move(table)};
}

} // namespace lidlark::usecase
