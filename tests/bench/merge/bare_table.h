#pragma once

#include "core/journal/event.h"

#include <sqlite3.h>

#include <span>
#include <stdexcept>
#include <string>
#include <vector>

namespace lidlark::bench {

/// An event as its row, everything worked out.
struct BareRow {
    std::string lane;
    std::string identity;
    std::string subject;
    const journal::Event *event = nullptr;
};

inline std::vector<BareRow> rowsOf(std::span<const journal::Event> events)
{
    std::vector<BareRow> rows;
    rows.reserve(events.size());
    for (const journal::Event &event : events)
        rows.push_back(
            {toText(event.lane), journal::identityOf(event), journal::subjectOf(event), &event});
    return rows;
}

/// SQLite by itself, as durable as a store: one table with the columns of ours and its primary key.
class BareTable
{
public:
    explicit BareTable(const std::string &path)
    {
        check(sqlite3_open(path.c_str(), &m_handle));
        run("PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL;");
        run("CREATE TABLE event (lane TEXT, device TEXT, counter INTEGER, identity TEXT, "
            "instant_ms INTEGER, logical INTEGER, day INTEGER, part INTEGER, offset_minutes "
            "INTEGER, author TEXT, kind TEXT, subject TEXT, fields TEXT, erased INTEGER, "
            "PRIMARY KEY (lane, device, counter, identity)) STRICT, WITHOUT ROWID");
        check(sqlite3_prepare_v2(
            m_handle,
            "INSERT OR IGNORE INTO event VALUES (?1,?2,?3,?4,?5,?6,?7,?8,?9,?10,?11,?12,?13,0)", -1,
            &m_insert, nullptr));
    }
    BareTable(const BareTable &) = delete;
    BareTable &operator=(const BareTable &) = delete;
    ~BareTable()
    {
        sqlite3_finalize(m_insert);
        sqlite3_close(m_handle);
    }

    /// In one transaction.
    void insert(std::span<const BareRow> rows)
    {
        run("BEGIN IMMEDIATE");
        for (const BareRow &row : rows)
            insertOne(row);
        run("COMMIT");
    }

private:
    void insertOne(const BareRow &row)
    {
        const journal::Event &event = *row.event;
        const std::string_view kind = journal::kindNames.of(event.kind);
        text(1, row.lane);
        text(2, event.device.value);
        sqlite3_bind_int64(m_insert, 3, static_cast<std::int64_t>(event.counter));
        text(4, row.identity);
        sqlite3_bind_int64(m_insert, 5, event.instant.ms);
        sqlite3_bind_int64(m_insert, 6, event.instant.logical);
        sqlite3_bind_int64(m_insert, 7, event.when.day.number);
        sqlite3_bind_int64(m_insert, 8, static_cast<std::int64_t>(event.when.part));
        sqlite3_bind_int64(m_insert, 9, event.offsetMinutes);
        text(10, event.author);
        text(11, kind);
        text(12, row.subject);
        text(13, event.fields);
        if (sqlite3_step(m_insert) != SQLITE_DONE)
            throw std::runtime_error(sqlite3_errmsg(m_handle));
        sqlite3_reset(m_insert);
    }
    void text(int place, std::string_view value)
    {
        sqlite3_bind_text(m_insert, place, value.data(), static_cast<int>(value.size()),
                          SQLITE_STATIC);
    }
    void run(const char *sql) { check(sqlite3_exec(m_handle, sql, nullptr, nullptr, nullptr)); }
    void check(int code)
    {
        if (code != SQLITE_OK)
            throw std::runtime_error(sqlite3_errmsg(m_handle));
    }

    sqlite3 *m_handle = nullptr;
    sqlite3_stmt *m_insert = nullptr;
};

} // namespace lidlark::bench
