#include "core/store/idle_statements.h"

#include <sqlite3.h>

#include <utility>

namespace lidlark::store {

namespace {

/// More texts than the core has; where they are made up as one goes, the rest is prepared anew.
constexpr std::size_t mostKept = 200;

} // namespace

IdleStatements::~IdleStatements()
{
    close();
}

sqlite3_stmt *IdleStatements::take(std::string_view sql)
{
    const auto found = m_idle.find(sql);
    return found == m_idle.end() ? nullptr : m_idle.extract(found).mapped();
}

void IdleStatements::giveBack(sqlite3_stmt *handle)
{
    sqlite3_reset(handle); // what it met was told when it ran
    sqlite3_clear_bindings(handle);
    const char *sql = sqlite3_sql(handle);
    const bool room = !m_closed && sql != nullptr && m_idle.size() < mostKept;
    if (!room || !m_idle.emplace(sql, handle).second)
        sqlite3_finalize(handle);
}

void IdleStatements::close()
{
    m_closed = true;
    for (const auto &[sql, handle] : std::exchange(m_idle, {}))
        sqlite3_finalize(handle);
}

} // namespace lidlark::store
