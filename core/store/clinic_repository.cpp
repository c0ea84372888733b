#include "core/store/clinic_repository.h"

#include "core/store/rows.h"

namespace lidlark::store {

namespace {

using workbench::Standing;

/// Boxes that were handed over answer for themselves; those that are only packed, by their build.
constexpr std::string_view selectByLot = R"sql(
    SELECT l.item, l.box, l.written, l.whose, coalesce(s.standing, 'new'), coalesce(s.day, 0)
    FROM lot_in_box AS l LEFT JOIN box_state AS s ON s.box = l.box
    WHERE l.lot = ?1 AND (?2 = '' OR l.item = ?2)
      AND coalesce(s.standing, 'new') <> 'retired'
      AND NOT EXISTS (SELECT 1 FROM box_build AS b WHERE b.box = l.box AND b.build = l.build)
    ORDER BY l.box, l.item, l.build)sql";

Day dayAt(const Statement &row, int column)
{
    return Day{static_cast<std::int32_t>(row.number(column))};
}

Standing standingAt(const Statement &row, int column)
{
    return workbench::standingNames.parse(row.text(column)).value_or(Standing::New);
}

} // namespace

Result<workbench::KeptSupplies> ClinicRepository::supplies()
{
    Result<Statement> query = m_database.prepare("SELECT said FROM supply ORDER BY item");
    if (!query)
        return query.error();
    const auto rows =
        collectRows<std::string>(*query, [](const Statement &row) { return row.text(0); });
    if (!rows)
        return rows.error();
    workbench::KeptSupplies supplies;
    for (const std::string &said : *rows) {
        if (auto kept = workbench::supplyFrom(said))
            supplies[kept->supply.item] = *kept;
    }
    return supplies;
}

Result<workbench::Designs> ClinicRepository::designs()
{
    Result<Statement> query = m_database.prepare("SELECT said FROM design ORDER BY id");
    if (!query)
        return query.error();
    const auto rows =
        collectRows<std::string>(*query, [](const Statement &row) { return row.text(0); });
    if (!rows)
        return rows.error();
    workbench::Designs designs;
    for (const std::string &said : *rows) {
        if (auto design = workbench::designFrom(said))
            designs[design->id] = *design;
    }
    return designs;
}

Result<std::vector<BuildRow>> ClinicRepository::builds()
{
    Result<Statement> query =
        m_database.prepare("SELECT id, name, day, boxes FROM build ORDER BY day DESC, id");
    if (!query)
        return query.error();
    return collectRows<BuildRow>(*query, [](const Statement &row) {
        return BuildRow{{row.text(0)}, row.text(1), dayAt(row, 2), static_cast<int>(row.number(3))};
    });
}

Result<std::optional<PackedBuild>> ClinicRepository::build(const workbench::BuildId &id)
{
    const auto events = eventsOf("build:" + id.value);
    const auto who = seen();
    if (!events || !who)
        return events ? who.error() : events.error();
    auto build = workbench::foldBuild(*events, *who);
    if (!build)
        return std::optional<PackedBuild>();
    return std::optional(PackedBuild{*std::move(build), workbench::foldMarks(*events, *who)});
}

Result<std::optional<workbench::BoxStatus>> ClinicRepository::status(const std::string &box)
{
    const auto events = eventsOf("box-status:" + box);
    const auto who = seen();
    if (!events || !who)
        return events ? who.error() : events.error();
    return workbench::foldBoxStatus(*events, *who);
}

Result<std::vector<std::pair<std::string, Standing>>> ClinicRepository::boxes()
{
    Result<Statement> query =
        m_database.prepare("SELECT box, standing FROM box_state ORDER BY box");
    if (!query)
        return query.error();
    return collectRows<std::pair<std::string, Standing>>(
        *query, [](const Statement &row) { return std::pair(row.text(0), standingAt(row, 1)); });
}

Result<std::vector<std::string>> ClinicRepository::handedOverAs(const workbench::BuildId &build)
{
    Result<Statement> query =
        m_database.prepare("SELECT box FROM box_build WHERE build = ?1 ORDER BY box");
    if (!query)
        return query.error();
    query->bind(1, build.value);
    return collectRows<std::string>(*query, [](const Statement &row) { return row.text(0); });
}

Result<std::vector<LotFound>> ClinicRepository::boxesWith(const std::string &lotKey,
                                                          const ItemId &item)
{
    Result<Statement> query = m_database.prepare(std::string(selectByLot));
    if (!query)
        return query.error();
    query->bind(1, lotKey).bind(2, item.value);
    return collectRows<LotFound>(*query, [](const Statement &row) {
        return LotFound{{row.text(0)}, row.text(1),        row.text(2),
                        row.text(3),   standingAt(row, 4), dayAt(row, 5)};
    });
}

Result<std::vector<journal::Event>> ClinicRepository::eventsOf(const std::string &subject)
{
    return m_events.standingOfSubject({clinicLane, subject});
}

Result<journal::Seen> ClinicRepository::seen()
{
    auto mets = m_events.ofSubject({clinicLane, "met"});
    if (mets)
        mets = m_events.counting(*std::move(mets));
    if (!mets)
        return mets.error();
    return journal::Seen(*mets);
}

} // namespace lidlark::store
