#include "core/store/database.h"

#include <sqlite3.h>

namespace lidlark::store {

namespace {

constexpr int applicationId = 0x4C49444C; // "LIDL", SQLite's own mark for whose file this is
constexpr int busyTimeoutMs = 5000;

} // namespace

void Database::Closer::operator()(sqlite3 *handle) const
{
    sqlite3_close_v2(handle);
}

Database::~Database()
{
    if (m_idle)
        m_idle->close();
}

Error Database::lastError() const
{
    return errorFromSqlite(sqlite3_extended_errcode(m_handle.get()),
                           m_path + ": " + sqlite3_errmsg(m_handle.get()));
}

Result<Database> Database::open(const std::string &path, std::span<const Migration> steps)
{
    return openWith(path, SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE, steps);
}

Result<Database> Database::openExisting(const std::string &path)
{
    Result<Database> opened = openWith(path, SQLITE_OPEN_READWRITE, migrations());
    if (!opened && opened.error().code == ErrorCode::Unwritable) {
        // SQLite says "cannot open" for a missing file and for a folder alike; only the first is
        // NotFound.
        sqlite3 *probe = nullptr;
        const bool there =
            sqlite3_open_v2(path.c_str(), &probe, SQLITE_OPEN_READONLY, nullptr) == SQLITE_OK;
        sqlite3_close_v2(probe);
        if (!there)
            return Error{ErrorCode::NotFound, path};
    }
    return opened;
}

Result<Database> Database::openWith(const std::string &path, int flags,
                                    std::span<const Migration> steps)
{
    sqlite3 *raw = nullptr;
    const int code = sqlite3_open_v2(path.c_str(), &raw, flags, nullptr);
    Database database(path, std::unique_ptr<sqlite3, Closer>(raw), steps);
    if (code != SQLITE_OK)
        return database.lastError();
    sqlite3_busy_timeout(raw, busyTimeoutMs);
    for (const auto step : {&Database::checkIsOurs, &Database::configure, &Database::migrate}) {
        const Outcome done = (database.*step)();
        // Our own statements are sound: what they stumble over at opening is a torn file.
        if (!done && done.error().code == ErrorCode::Invalid)
            return Error{ErrorCode::Unreadable, done.error().detail};
        if (!done)
            return done.error();
    }
    return database;
}

Result<Statement> Database::prepare(std::string_view sql)
{
    if (sqlite3_stmt *idle = m_idle->take(sql))
        return Statement(idle, m_idle);
    sqlite3_stmt *handle = nullptr;
    const int code = sqlite3_prepare_v3(m_handle.get(), sql.data(), static_cast<int>(sql.size()),
                                        SQLITE_PREPARE_PERSISTENT, &handle, nullptr);
    if (code != SQLITE_OK)
        return lastError();
    return Statement(handle, m_idle);
}

Outcome Database::run(std::string_view sql)
{
    if (sqlite3_exec(m_handle.get(), std::string(sql).c_str(), nullptr, nullptr, nullptr) !=
        SQLITE_OK)
        return lastError();
    return Done{};
}

Result<int> Database::pragma(std::string_view name)
{
    Result<Statement> query = prepare("PRAGMA " + std::string(name));
    if (!query)
        return query.error();
    const Result<bool> row = query->step();
    if (!row)
        return lastError();
    return *row ? static_cast<int>(query->number(0)) : 0;
}

Result<std::string> Database::integrity()
{
    Result<Statement> query = prepare("PRAGMA integrity_check(1)");
    if (!query)
        return query.error();
    const Result<bool> row = query->step();
    if (!row)
        return row.error();
    return *row ? query->text(0) : std::string("ok");
}

Outcome Database::checkIsOurs()
{
    const Result<int> mark = pragma("application_id");
    if (!mark)
        return mark.error();
    const Result<int> schema = pragma("user_version");
    if (!schema)
        return schema.error();
    Result<Statement> tables = prepare("SELECT count(*) FROM sqlite_schema");
    if (!tables)
        return tables.error();
    if (const Result<bool> row = tables->step(); !row)
        return lastError();
    const bool empty = tables->number(0) == 0;
    if (*mark != applicationId && !(empty && *mark == 0))
        return Error{ErrorCode::Unreadable, m_path + ": not a Lidlark store"};
    if (*schema > static_cast<int>(m_steps.size()))
        return Error{ErrorCode::NewerSchema, m_path};
    return Done{};
}

Outcome Database::configure()
{
    return run("PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON;"
               "PRAGMA trusted_schema = OFF; PRAGMA secure_delete = ON;"); // erased is gone
}

Outcome Database::backUp(int schema)
{
    Result<Statement> copy = prepare("VACUUM INTO ?1");
    if (!copy)
        return copy.error();
    return copy->bind(1, m_path + ".before-" + std::to_string(schema)).run();
}

Outcome Database::migrate()
{
    const Result<int> schema = pragma("user_version");
    if (!schema)
        return schema.error();
    if (*schema == static_cast<int>(m_steps.size()))
        return Done{};
    if (*schema > 0) {
        if (Outcome copied = backUp(m_steps.back().number); !copied)
            return copied;
    }
    for (const Migration &migration : m_steps) {
        if (migration.number <= *schema)
            continue;
        Result<Transaction> transaction = Transaction::begin(*this);
        if (!transaction)
            return transaction.error();
        const std::string after = "PRAGMA application_id = " + std::to_string(applicationId) +
                                  "; PRAGMA user_version = " + std::to_string(migration.number);
        for (const std::string_view sql : {migration.sql, std::string_view(after)}) {
            if (Outcome done = run(sql); !done)
                return done;
        }
        if (Outcome done = transaction->commit(); !done)
            return done;
    }
    return Done{};
}

Result<Transaction> Transaction::begin(Database &database)
{
    if (const Outcome done = database.run("BEGIN IMMEDIATE"); !done)
        return done.error();
    return Transaction(database);
}

Transaction::~Transaction()
{
    if (m_database != nullptr)
        (void)m_database->run("ROLLBACK");
}

Outcome Transaction::commit()
{
    if (Outcome done = m_database->run("COMMIT"); !done)
        return done; // the destructor rolls back
    m_database = nullptr;
    return Done{};
}

} // namespace lidlark::store
