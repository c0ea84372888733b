#pragma once

#include "core/store/statement.h"

#include <vector>

namespace lidlark::store {

/// Runs @p query to its end; @p read makes one value of the row it stands on.
template <class Row, class Read> Result<std::vector<Row>> collectRows(Statement &query, Read read)
{
    std::vector<Row> rows;
    Result<bool> row = query.step();
    for (; row && *row; row = query.step())
        rows.push_back(read(query));
    if (!row)
        return row.error();
    return rows;
}

} // namespace lidlark::store
