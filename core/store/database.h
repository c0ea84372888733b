#pragma once

#include "core/base/result.h"
#include "core/store/migrations.h"
#include "core/store/statement.h"

#include <memory>
#include <span>
#include <string>
#include <string_view>
#include <utility>

struct sqlite3;

namespace lidlark::store {

/// An open SQLite file that is a Lidlark store, at the schema this program knows.
///
/// Durable by default: WAL with FULL sync, so that what has been acknowledged survives a dead
/// battery. Foreign keys on. Opening a file that is not ours, is torn, or was written by a later
/// Lidlark changes nothing in it.
class Database
{
public:
    /// Opens or creates @p path (":memory:" for tests). Before a migration of an existing store a
    /// copy is laid beside it: "<path>.before-<schema>".
    /// Errors: Unreadable (foreign or torn), NewerSchema, Unwritable, Busy.
    static Result<Database> open(const std::string &path) { return open(path, migrations()); }
    /// The same with other steps of the schema: how a later version would open it.
    static Result<Database> open(const std::string &path, std::span<const Migration> steps);
    /// As `open`, but a file that does not exist is NotFound and nothing is created.
    static Result<Database> openExisting(const std::string &path);

    Result<Statement> prepare(std::string_view sql);
    /// Runs whole statements without parameters.
    Outcome run(std::string_view sql);
    /// What SQLite's own check says: "ok", or the first fault.
    Result<std::string> integrity();

    [[nodiscard]] const std::string &path() const { return m_path; }

    Database(Database &&other) noexcept = default;
    Database &operator=(Database &&other) noexcept = default;
    Database(const Database &) = delete;
    Database &operator=(const Database &) = delete;
    ~Database();

private:
    struct Closer {
        void operator()(sqlite3 *handle) const;
    };
    Database(std::string path, std::unique_ptr<sqlite3, Closer> handle,
             std::span<const Migration> steps)
        : m_path(std::move(path)), m_handle(std::move(handle)), m_steps(steps)
    {
    }
    static Result<Database> openWith(const std::string &path, int flags,
                                     std::span<const Migration> steps);
    [[nodiscard]] Error lastError() const;
    Result<int> pragma(std::string_view name);
    Outcome checkIsOurs();
    Outcome configure();
    Outcome migrate();
    Outcome backUp(int schema);

    std::string m_path;
    std::unique_ptr<sqlite3, Closer> m_handle;
    std::span<const Migration> m_steps;
    std::shared_ptr<IdleStatements> m_idle = std::make_shared<IdleStatements>();
};

/// Everything between construction and `commit` happens together or not at all.
class Transaction
{
public:
    static Result<Transaction> begin(Database &database);
    Transaction(Transaction &&other) noexcept : m_database(std::exchange(other.m_database, nullptr))
    {
    }
    Transaction(const Transaction &) = delete;
    Transaction &operator=(const Transaction &) = delete;
    Transaction &operator=(Transaction &&) = delete;
    ~Transaction(); ///< Rolls back unless committed.

    Outcome commit();

private:
    explicit Transaction(Database &database) : m_database(&database) {}
    Database *m_database;
};

} // namespace lidlark::store
