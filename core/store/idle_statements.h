#pragma once

#include <map>
#include <string>
#include <string_view>

struct sqlite3_stmt;

namespace lidlark::store {

/// Statements of one store that were prepared and are not in use now: to prepare one takes longer
/// than most of them run. Of each text one is kept, at its start and without values.
class IdleStatements
{
public:
    IdleStatements() = default;
    IdleStatements(const IdleStatements &) = delete;
    IdleStatements &operator=(const IdleStatements &) = delete;
    ~IdleStatements();

    /// @returns null where there is none of this text.
    sqlite3_stmt *take(std::string_view sql);
    void giveBack(sqlite3_stmt *handle);
    /// The store is closed: nothing is kept any more.
    void close();

private:
    std::map<std::string, sqlite3_stmt *, std::less<>> m_idle;
    bool m_closed = false;
};

} // namespace lidlark::store
