#pragma once

#include "core/base/id.h"
#include "core/base/part_of_day.h"
#include "core/box/box_events.h"
#include "core/box/place.h"
#include "core/store/database.h"

#include <optional>
#include <string>
#include <vector>

namespace lidlark::store {

struct BoxRow {
    BoxId id;
    ChildId child;
    std::string alias; ///< The child's.
};

struct RevisionRow {
    box::Revision revision;
    Day issued;
};

struct ItemRow {
    ItemId item;
    int expected = 0;
    int low = 0;
    int high = 0;
    int out = 0;
    std::optional<Day> opened;
    bool driedOut = false;
    bool pleaseCount = false;
};

struct LossRow {
    ItemId item;
    std::string identity;
    int pieces = 0;
    std::string author;
    DayPart when;
};

struct OutcomeRow {
    ItemId item;
    PlayId play;
    box::Exceptions exceptions;
    std::string author;
};

/// The boxes of a store.
class BoxRepository
{
public:
    explicit BoxRepository(Database &database) : m_database(database) {}

    Result<std::vector<BoxRow>> boxes();
    /// @returns NotFound when no box belongs to a child of that alias.
    Result<BoxRow> boxOf(const std::string &childAlias);
    /// @returns NotFound when that child has no box here.
    Result<BoxRow> boxOfChild(const ChildId &child);
    Result<std::optional<RevisionRow>> revision(const BoxId &box);
    Result<std::optional<box::Place>> place(const BoxId &box);
    Result<std::vector<ItemRow>> items(const BoxId &box);
    /// Losses nobody has found or checked the floor for.
    Result<std::vector<LossRow>> openLosses(const BoxId &box);
    Result<std::vector<OutcomeRow>> outcomes(const BoxId &box);

private:
    Result<BoxRow> boxWhere(std::string_view condition, const std::string &value);
    Database &m_database;
};

} // namespace lidlark::store
