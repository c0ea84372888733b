#pragma once

#include "tests/core/rotation/plan_program.h"

#include <coin/Cbc_C_Interface.h>

#include <cmath>
#include <optional>
#include <string>

namespace lidlark::rotation::oracle {

/// CBC's optimum at zero gap, or the best it has after so many seconds; nothing when it has none.
inline std::optional<int> cbcOptimum(const LinearProgram &program, int seconds)
{
    Cbc_Model *model = Cbc_newModel();
    Cbc_setLogLevel(model, 0);
    for (const LinearProgram::Column &column : program.columns)
        Cbc_addCol(model, "", 0, column.most, column.factor, column.isWhole ? 1 : 0, 0, nullptr,
                   nullptr);
    for (const LinearProgram::Row &row : program.rows)
        Cbc_addRow(model, "", static_cast<int>(row.columns.size()), row.columns.data(),
                   row.factors.data(), row.kind, row.bound);
    Cbc_setObjSense(model, -1); // maximise
    Cbc_setParameter(model, "ratioGap", "0");
    Cbc_setParameter(model, "seconds", std::to_string(seconds).c_str());
    Cbc_solve(model);
    const bool has = Cbc_bestSolution(model) != nullptr && Cbc_isProvenInfeasible(model) == 0;
    const double value = Cbc_getObjValue(model);
    Cbc_deleteModel(model);
    return has ? std::optional(static_cast<int>(std::lround(value))) : std::nullopt;
}

} // namespace lidlark::rotation::oracle
