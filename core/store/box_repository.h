#pragma once

#include "core/base/id.h"
#include "core/base/part_of_day.h"
#include "core/box/item_care.h"
#include "core/box/item_ledger.h"
#include "core/box/place.h"
#include "core/box/request.h"
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

/// The lid list in force (core/box/lid_list.h).
struct RevisionRow {
    box::Revision revision;
    Day issued;
    int heads = 1;
    Day begun = {}; ///< On which the box was handed over.
};

/// One item of a box, as core/box/item_ledger.h folds it.
struct ItemRow {
    ItemId item;
    int expected = 0; ///< By the lid list.
    int low = 0;
    int high = 0;
    int out = 0;
    bool driedOut = false;
    bool pleaseCount = false;
    std::optional<Day> counted; ///< Last full count.
    box::ItemCare care;
    std::vector<box::Arrival> arrivals;
    std::vector<box::DatedUse> uses;
    std::vector<box::Request> requests;   ///< Every round, in order.
    std::vector<box::Question> questions; ///< Answered ones too.
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
    Result<std::optional<box::PlaceSaid>> placeIn(const std::string &table, const BoxId &box);
    Database &m_database;
};

} // namespace lidlark::store
