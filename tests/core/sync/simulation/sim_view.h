#pragma once

#include "sim_phone.h"

#include "core/box/item_ledger.h"
#include "core/crew/rights.h"
#include "core/store/projector.h"

#include <array>
#include <map>
#include <set>
#include <string>

namespace lidlark::test {

/// One event as its place and hash: enough to tell whether it is somewhere.
struct Written {
    std::string lane;
    std::string device;
    std::uint64_t counter = 0;
    std::string identity;
    std::string kind;
    std::int64_t day = 0;

    auto operator<=>(const Written &) const = default;
};

/// A query whose rows are text.
inline std::vector<std::vector<std::string>> rowsOf(store::Database &database,
                                                    const std::string &sql)
{
    std::vector<std::vector<std::string>> rows;
    auto query = database.prepare(sql);
    if (!query)
        return {{"unreadable"}};
    for (auto row = query->step(); row && *row; row = query->step()) {
        std::vector<std::string> &cells = rows.emplace_back();
        for (int column = 0; column < query->columns(); ++column)
            cells.push_back(query->text(column));
    }
    return rows;
}

inline std::string textOf(const std::vector<std::vector<std::string>> &rows)
{
    std::string text;
    for (const auto &row : rows) {
        for (const std::string &cell : row)
            text += cell + '\x1f';
        text += '\n';
    }
    return text;
}

inline std::vector<Written> writtenIn(store::Database &database)
{
    std::vector<Written> all;
    for (const auto &row :
         rowsOf(database, "SELECT lane, device, counter, identity, kind, day FROM event"))
        all.push_back({row.at(0), row.at(1), std::stoull(row.at(2)), row.at(3), row.at(4),
                       std::stoll(row.at(5))});
    return all;
}

/// What a store holds of each lane, and what it makes of it.
struct LaneView {
    std::string events;
    std::string rows;
};

/// The tables that are folded from a lane, with the column that names its box, home or child.
inline std::string rowsOfLane(store::Database &database, const journal::Lane &lane)
{
    using Tables = std::vector<std::string>;
    const auto wanted = [&]() -> Tables {
        switch (lane.kind) {
        case journal::LaneKind::Box:
            return {"box WHERE id",          "box_revision WHERE box",  "box_place WHERE box",
                    "box_item WHERE box",    "box_place_too WHERE box", "loss WHERE box",
                    "outcome WHERE box",     "item_arrival WHERE box",  "item_use WHERE box",
                    "piece WHERE box",       "request WHERE box",       "question WHERE box",
                    "grading_pin WHERE box", "crew_member WHERE box"};
        case journal::LaneKind::Safety:
            return {"fact WHERE home", "permission WHERE home"};
        case journal::LaneKind::Home:
            return {"play WHERE home",    "offered WHERE home", "grading WHERE home",
                    "planned WHERE home", "reads WHERE home",   "our_way WHERE home"};
        case journal::LaneKind::CheckIns:
            return {"check_in WHERE home"};
        default:
            return {};
        }
    }();
    std::string text;
    for (const std::string &table : wanted)
        text += textOf(rowsOf(database, "SELECT * FROM " + table + " = '" + lane.scope + "'"));
    return text;
}

inline std::map<journal::Lane, LaneView> lanesIn(store::Database &database)
{
    std::map<journal::Lane, LaneView> lanes;
    for (const auto &row : rowsOf(database, "SELECT lane, device, counter, identity, erased FROM "
                                            "event ORDER BY lane, device, counter, identity")) {
        if (const auto lane = journal::laneFromText(row.at(0)))
            lanes[*lane].events += row.at(1) + row.at(2) + row.at(3) + row.at(4) + '\n';
    }
    for (auto &[lane, view] : lanes)
        view.rows = rowsOfLane(database, lane);
    return lanes;
}

/// Whether every item's pieces add up (events.md 6.4), at both ends of what is open.
inline bool conserves(SimPhone &phone, const std::string &box)
{
    const journal::Lane lane{journal::LaneKind::Box, box};
    store::EventRepository events(phone.database);
    auto mets = events.ofSubject({lane, "met"});
    if (mets)
        mets = events.counting(*std::move(mets));
    const auto items = store::BoxRepository(phone.database).items({box});
    if (!mets || !items)
        return false;
    const journal::Meetings meetings(*mets);
    return std::ranges::all_of(*items, [&](const store::ItemRow &row) {
        const auto said = events.standingOfSubject({lane, "item:" + row.item.value});
        if (!said)
            return false;
        const auto ledger = box::foldItem({row.expected, Day{}}, *said, meetings);
        return ledger.careful.conserved() && ledger.hopeful.conserved() &&
               ledger.low() == row.low && ledger.high() == row.high;
    });
}

} // namespace lidlark::test
