#include "core/store/clinic_rows.h"

#include "core/workbench/lot.h"

namespace lidlark::store {

namespace {

using workbench::BoxStatus;
using workbench::KeptBuild;

Outcome writeSupply(Database &database, const std::string &item,
                    const std::optional<workbench::KeptSupply> &kept)
{
    Result<Statement> query =
        database.prepare(kept ? "INSERT OR REPLACE INTO supply (item, said) VALUES (?1, ?2)"
                              : "DELETE FROM supply WHERE item = ?1");
    if (!query)
        return query.error();
    query->bind(1, item);
    if (kept)
        query->bind(2, workbench::fieldsOf(*kept));
    return query->run();
}

Outcome writeDesign(Database &database, const std::string &id,
                    const std::optional<workbench::Design> &design)
{
    Result<Statement> query = database.prepare(
        design ? "INSERT OR REPLACE INTO design (id, name, said) VALUES (?1, ?2, ?3)"
               : "DELETE FROM design WHERE id = ?1");
    if (!query)
        return query.error();
    query->bind(1, id);
    if (design)
        query->bind(2, design->name).bind(3, workbench::fieldsOf(*design));
    return query->run();
}

struct LotRow {
    std::string lot;
    ItemId item;
    std::string box;
    std::string build;
    std::string whose;
};

/// Of one lot that was written in two ways, the smaller stands: the same on every device.
Outcome writeLot(Database &database, const LotRow &row)
{
    const std::string key = workbench::lotKey(row.lot);
    if (key.empty())
        return Done{};
    Result<Statement> query =
        database.prepare("INSERT INTO lot_in_box (lot, item, box, build, written, whose) "
                         "VALUES (?1, ?2, ?3, ?4, ?5, ?6) "
                         "ON CONFLICT DO UPDATE SET written = min(written, excluded.written)");
    if (!query)
        return query.error();
    return query->bind(1, key)
        .bind(2, row.item.value)
        .bind(3, row.box)
        .bind(4, row.build)
        .bind(5, row.lot)
        .bind(6, row.whose)
        .run();
}

Outcome clear(Database &database, std::string_view sql, const std::string &key)
{
    Result<Statement> query = database.prepare(std::string(sql));
    return query ? query->bind(1, key).run() : Outcome(query.error());
}

Outcome writeBuildRow(Database &database, const KeptBuild &build)
{
    Result<Statement> query = database.prepare(
        "INSERT OR REPLACE INTO build (id, name, day, boxes) VALUES (?1, ?2, ?3, ?4)");
    if (!query)
        return query.error();
    return query->bind(1, build.id.value)
        .bind(2, build.name)
        .bind(3, std::int64_t{build.day.number})
        .bind(4, static_cast<std::int64_t>(build.boxes.size()))
        .run();
}

Outcome writeBuild(Database &database, const std::string &id,
                   std::span<const journal::Event> events, const journal::Seen &seen)
{
    for (const std::string_view sql :
         {"DELETE FROM build WHERE id = ?1", "DELETE FROM lot_in_box WHERE build = ?1"}) {
        if (Outcome done = clear(database, sql, id); !done)
            return done;
    }
    const auto build = workbench::foldBuild(events, seen);
    if (build) {
        if (Outcome done = writeBuildRow(database, *build); !done)
            return done;
    }
    for (const auto &[line, marks] : workbench::foldMarks(events, seen)) {
        const workbench::KeptBox *box = build ? build->box(line.first) : nullptr;
        for (const workbench::PackedBy &packed : marks.packed) {
            Outcome done = writeLot(database, {packed.lot, line.second, line.first, id,
                                               box != nullptr ? box->box.whose : std::string()});
            if (!done)
                return done;
        }
    }
    return Done{};
}

Outcome writeStatusRow(Database &database, const std::string &box, const BoxStatus &status)
{
    Result<Statement> query =
        database.prepare("INSERT OR REPLACE INTO box_state (box, standing, child, day, said_by) "
                         "VALUES (?1, ?2, ?3, ?4, ?5)");
    if (!query)
        return query.error();
    return query->bind(1, box)
        .bind(2, workbench::standingNames.of(status.standing))
        .bind(3, status.child)
        .bind(4, std::int64_t{status.day.number})
        .bind(5, status.by)
        .run();
}

Outcome writeStatusParts(Database &database, const std::string &box, const BoxStatus &status)
{
    for (const std::string &build : status.builds) {
        Result<Statement> query =
            database.prepare("INSERT OR IGNORE INTO box_build (box, build) VALUES (?1, ?2)");
        if (!query)
            return query.error();
        if (Outcome done = query->bind(1, box).bind(2, build).run(); !done)
            return done;
    }
    for (const auto &[item, lots] : status.lots) {
        for (const std::string &lot : lots) {
            if (Outcome done = writeLot(database, {lot, item, box, {}, status.child}); !done)
                return done;
        }
    }
    return Done{};
}

Outcome writeStatus(Database &database, const std::string &box,
                    const std::optional<BoxStatus> &status)
{
    for (const std::string_view sql :
         {"DELETE FROM box_state WHERE box = ?1", "DELETE FROM box_build WHERE box = ?1",
          "DELETE FROM lot_in_box WHERE build = '' AND box = ?1"}) {
        if (Outcome done = clear(database, sql, box); !done)
            return done;
    }
    if (!status)
        return Done{};
    if (Outcome done = writeStatusRow(database, box, *status); !done)
        return done;
    return writeStatusParts(database, box, *status);
}

} // namespace

Outcome writeClinicSubject(Database &database, const LaneSubject &subject,
                           std::span<const journal::Event> events, const journal::Seen &seen)
{
    if (subject.lane != clinicLane)
        return Done{};
    const std::string_view text = subject.subject;
    const std::string name(text.substr(text.find(':') + 1));
    if (text.starts_with("supply:"))
        return writeSupply(database, name, workbench::foldSupply(events, seen));
    if (text.starts_with("design:"))
        return writeDesign(database, name, workbench::foldDesign(events, seen));
    if (text.starts_with("build:"))
        return writeBuild(database, name, events, seen);
    if (text.starts_with("box-status:"))
        return writeStatus(database, name, workbench::foldBoxStatus(events, seen));
    return Done{};
}

} // namespace lidlark::store
