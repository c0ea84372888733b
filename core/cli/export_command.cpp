#include "core/cli/commands.h"

#include "core/usecase/export_record.h"
#include "core/wording/export_words.h"

#include <nlohmann/json.hpp>

#include <iostream>

namespace lidlark::cli {

int runExport(const Options &options, const ExportOptions &asked)
{
    const auto desk = Desk::open(options);
    if (!desk)
        return fail(desk.error());
    const auto record = usecase::openRecord((*desk)->workplace(), asked.child);
    if (!record)
        return fail(record.error());
    const std::string about =
        wording::readMeText(wording::readMeOf(record->children, record->person, record->made));
    const std::vector<usecase::NamedFile> files = usecase::filesOf(*record, about);
    if (const Outcome done = usecase::writeWholeFolder(asked.to, files); !done)
        return fail(done.error());
    nlohmann::ordered_json names = nlohmann::ordered_json::array();
    for (const usecase::NamedFile &file : files)
        names.push_back(file.name);
    if (options.json) {
        std::cout << nlohmann::ordered_json{{"folder", asked.to},
                                            {"files", names},
                                            {"rows", record->rows()}}
                         .dump()
                  << '\n';
        return allWell;
    }
    std::cout << asked.to << ": " << names.size()
              << " files. It is not locked: whoever opens it can "
              << "read all of it.\n";
    return allWell;
}

} // namespace lidlark::cli
