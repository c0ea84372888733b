#include "core/usecase/export_record.h"

#include "core/store/recording.h"
#include "core/usecase/export_tables.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>

namespace lidlark::usecase {

namespace {

using OrderedJson = nlohmann::ordered_json;

std::string jsonTextOf(const OpenRecord &record)
{
    OrderedJson json{{"what this is", "what one phone with Lidlark holds about a family"},
                     {"form", 1},
                     {"made on", toText(record.made)},
                     {"made by", record.person},
                     {"part in the crew", store::roleNames.of(record.role)},
                     {"children", record.children}};
    for (const OpenTable &table : record.tables)
        json[table.group][table.name] = jsonOf(table);
    // What is no UTF-8 becomes the sign for that; nothing else of the record is lost by it.
    return json.dump(2, ' ', false, OrderedJson::error_handler_t::replace) + "\n";
}

std::string csvName(const OpenTable &table)
{
    std::string name = table.name;
    std::ranges::replace(name, ' ', '-');
    return name + ".csv";
}

} // namespace

std::size_t OpenRecord::rows() const
{
    std::size_t rows = 0;
    for (const OpenTable &table : tables)
        rows += table.rows.size();
    return rows;
}

Result<OpenRecord> openRecord(Workplace &workplace, const std::string &child)
{
    if (workplace.device.role == store::Role::Guest)
        return Error{ErrorCode::NotAllowed, "an open copy"};
    const Result<DayPart> today = store::todayOf(workplace.clock);
    if (!today)
        return today.error();
    const Result<ExportSource> source = exportSource(workplace, child);
    if (!source)
        return source.error();
    OpenRecord record{today->day, workplace.device.person, workplace.device.role, {}, {}};
    for (const store::BoxRow &box : source->boxes)
        record.children.push_back(box.alias);
    static constexpr std::array all{familyTables, boxTables,     openMatterTables,
                                    playTables,   checkInTables, goalTables,
                                    ownTables,    noteTables,    notedTables};
    for (const auto tablesOf : all) {
        Tables tables = tablesOf(*source);
        if (!tables)
            return tables.error();
        std::ranges::move(*tables, std::back_inserter(record.tables));
    }
    return record;
}

std::vector<NamedFile> filesOf(const OpenRecord &record, const std::string &about)
{
    std::vector<NamedFile> files{{"read-me.txt", about}, {"record.json", jsonTextOf(record)}};
    for (const OpenTable &table : record.tables) {
        if (!table.rows.empty())
            files.push_back({csvName(table), csvOf(table)});
    }
    return files;
}

} // namespace lidlark::usecase
