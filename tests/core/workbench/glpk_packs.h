#pragma once

#include "core/workbench/cheapest_packs.h"

#include <cmath>
#include <glpk.h>
#include <optional>
#include <span>
#include <vector>

namespace lidlark::workbench::judge {

/// Several items to cover at once, written for GLPK's mixed-integer solver: a whole column for each
/// offer, a row for each item, all money in one objective.
class GlpkPacks
{
public:
    GlpkPacks() : m_problem(glp_create_prob()) { glp_set_obj_dir(m_problem, GLP_MIN); }
    GlpkPacks(const GlpkPacks &) = delete;
    GlpkPacks &operator=(const GlpkPacks &) = delete;
    ~GlpkPacks() { glp_delete_prob(m_problem); }

    void addItem(std::span<const PackPrice> offers, std::int64_t pieces)
    {
        std::vector<int> columns{0};
        std::vector<double> factors{0.0};
        for (const PackPrice &offer : offers) {
            const int column = glp_add_cols(m_problem, 1);
            glp_set_col_kind(m_problem, column, GLP_IV);
            glp_set_col_bnds(m_problem, column, GLP_LO, 0.0, 0.0);
            glp_set_obj_coef(m_problem, column, static_cast<double>(offer.pence));
            columns.push_back(column);
            factors.push_back(static_cast<double>(offer.pieces));
        }
        const int row = glp_add_rows(m_problem, 1);
        glp_set_row_bnds(m_problem, row, GLP_LO, static_cast<double>(pieces), 0.0);
        glp_set_mat_row(m_problem, row, static_cast<int>(offers.size()), columns.data(),
                        factors.data());
    }

    /// Pence. @returns nothing where GLPK did not prove its answer in that time.
    std::optional<std::int64_t> least(int milliseconds)
    {
        glp_iocp options;
        glp_init_iocp(&options);
        options.presolve = GLP_ON;
        options.msg_lev = GLP_MSG_OFF;
        options.mip_gap = 0.0;
        options.tm_lim = milliseconds;
        if (glp_intopt(m_problem, &options) != 0 || glp_mip_status(m_problem) != GLP_OPT)
            return std::nullopt;
        return std::llround(glp_mip_obj_val(m_problem));
    }

private:
    glp_prob *m_problem;
};

} // namespace lidlark::workbench::judge
