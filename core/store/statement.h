#pragma once

#include "core/base/result.h"
#include "core/store/idle_statements.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

struct sqlite3_stmt;

namespace lidlark::store {

/// A prepared statement. Parameters are numbered from 1, columns from 0; values are always bound.
class Statement
{
public:
    /// @param idle where it goes when it is done with.
    Statement(sqlite3_stmt *handle, std::shared_ptr<IdleStatements> idle)
        : m_handle(handle, Giver{std::move(idle)})
    {
    }

    Statement &bind(int parameter, std::string_view text);
    Statement &bind(int parameter, std::int64_t number);
    Statement &bind(int parameter, std::optional<std::int64_t> number);
    Statement &bindText(int parameter, const std::optional<std::string> &text);
    Statement &bindBytes(int parameter, std::string_view bytes);

    /// @returns true: a row is here; false: no more rows.
    Result<bool> step();
    /// Runs to the end and makes ready for the next binding.
    Outcome run();
    void reset();

    [[nodiscard]] int columns() const;
    [[nodiscard]] std::string text(int column) const;
    [[nodiscard]] std::string bytes(int column) const;
    [[nodiscard]] std::int64_t number(int column) const;
    [[nodiscard]] bool isNull(int column) const;

private:
    struct Giver {
        std::shared_ptr<IdleStatements> idle;
        void operator()(sqlite3_stmt *handle) const { idle->giveBack(handle); }
    };
    std::unique_ptr<sqlite3_stmt, Giver> m_handle;
};

/// What went wrong, in our words, from SQLite's result code (its extended codes included).
Error errorFromSqlite(int code, const std::string &detail);

} // namespace lidlark::store
