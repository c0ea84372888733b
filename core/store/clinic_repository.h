#pragma once

#include "core/store/clinic_rows.h"
#include "core/workbench/box_status.h"
#include "core/workbench/kept_build.h"
#include "core/workbench/kept_supply.h"
#include "core/workbench/pack_mark.h"

#include <optional>
#include <string>
#include <vector>

namespace lidlark::store {

struct BuildRow {
    workbench::BuildId id;
    std::string name;
    Day day;
    int boxes = 0;
};

/// A build with all that was packed of it.
struct PackedBuild {
    workbench::KeptBuild build;
    workbench::Marks marks;
};

/// A box in which a lot may lie.
struct LotFound {
    ItemId item;
    std::string box;
    std::string written; ///< The lot, as it was written.
    std::string whose;   ///< The child's alias; may be empty.
    workbench::Standing standing = workbench::Standing::New;
    Day day; ///< Of the step that brought it to where it stands; new: of no meaning.
    bool operator==(const LotFound &) const = default;
};

/// The clinic's own: what is bought, designed, packed, handed over and cleaned.
class ClinicRepository
{
public:
    explicit ClinicRepository(Database &database) : m_database(database), m_events(database) {}

    Result<workbench::KeptSupplies> supplies();
    Result<workbench::Designs> designs();
    /// Newest first.
    Result<std::vector<BuildRow>> builds();
    /// Nothing: no such build.
    Result<std::optional<PackedBuild>> build(const workbench::BuildId &id);
    /// Nothing: never spoken of.
    Result<std::optional<workbench::BoxStatus>> status(const std::string &box);
    /// Codes of all boxes that were ever handed over or retired, and where they stand.
    Result<std::vector<std::pair<std::string, workbench::Standing>>> boxes();
    /// Codes of the boxes that were handed over as that build.
    Result<std::vector<std::string>> handedOverAs(const workbench::BuildId &build);
    /// Every box that is not retired and may hold the lot. @param item empty: whichever.
    Result<std::vector<LotFound>> boxesWith(const std::string &lotKey, const ItemId &item);

private:
    Result<std::vector<journal::Event>> eventsOf(const std::string &subject);
    Result<journal::Seen> seen();

    Database &m_database;
    EventRepository m_events;
};

} // namespace lidlark::store
