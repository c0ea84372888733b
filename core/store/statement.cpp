#include "core/store/statement.h"

#include <sqlite3.h>

namespace lidlark::store {

Error errorFromSqlite(int code, const std::string &detail)
{
    switch (code & 0xff) {
    case SQLITE_NOTADB:
    case SQLITE_CORRUPT:
        return {ErrorCode::Unreadable, detail};
    case SQLITE_FULL:
    case SQLITE_READONLY:
    case SQLITE_IOERR:
    case SQLITE_CANTOPEN:
    case SQLITE_PERM:
        return {ErrorCode::Unwritable, detail};
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return {ErrorCode::Busy, detail};
    default:
        return {ErrorCode::Invalid, detail};
    }
}

Statement &Statement::bind(int parameter, std::string_view text)
{
    sqlite3_bind_text64(m_handle.get(), parameter, text.data(), text.size(), SQLITE_TRANSIENT,
                        SQLITE_UTF8);
    return *this;
}

Statement &Statement::bind(int parameter, std::int64_t number)
{
    sqlite3_bind_int64(m_handle.get(), parameter, number);
    return *this;
}

Statement &Statement::bind(int parameter, std::optional<std::int64_t> number)
{
    if (number)
        return bind(parameter, *number);
    sqlite3_bind_null(m_handle.get(), parameter);
    return *this;
}

Statement &Statement::bindBytes(int parameter, std::string_view bytes)
{
    sqlite3_bind_blob64(m_handle.get(), parameter, bytes.data(), bytes.size(), SQLITE_TRANSIENT);
    return *this;
}

Statement &Statement::bindText(int parameter, const std::optional<std::string> &text)
{
    if (text)
        return bind(parameter, *text);
    sqlite3_bind_null(m_handle.get(), parameter);
    return *this;
}

Result<bool> Statement::step()
{
    const int code = sqlite3_step(m_handle.get());
    if (code == SQLITE_ROW)
        return true;
    if (code == SQLITE_DONE)
        return false;
    sqlite3 *database = sqlite3_db_handle(m_handle.get());
    return errorFromSqlite(sqlite3_extended_errcode(database), sqlite3_errmsg(database));
}

Outcome Statement::run()
{
    Result<bool> row = step();
    while (row && *row)
        row = step();
    reset();
    if (!row)
        return row.error();
    return Done{};
}

void Statement::reset()
{
    sqlite3_reset(m_handle.get());
}

int Statement::columns() const
{
    return sqlite3_column_count(m_handle.get());
}

std::string Statement::text(int column) const
{
    const auto *bytes = sqlite3_column_text(m_handle.get(), column);
    const auto size = static_cast<std::size_t>(sqlite3_column_bytes(m_handle.get(), column));
    return bytes == nullptr ? std::string()
                            : std::string(reinterpret_cast<const char *>(bytes), size);
}

std::string Statement::bytes(int column) const
{
    const void *bytes = sqlite3_column_blob(m_handle.get(), column);
    const int size = sqlite3_column_bytes(m_handle.get(), column);
    return bytes == nullptr
               ? std::string()
               : std::string(static_cast<const char *>(bytes), static_cast<std::size_t>(size));
}

std::int64_t Statement::number(int column) const
{
    return sqlite3_column_int64(m_handle.get(), column);
}

bool Statement::isNull(int column) const
{
    return sqlite3_column_type(m_handle.get(), column) == SQLITE_NULL;
}

} // namespace lidlark::store
