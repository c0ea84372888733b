#pragma once

#include "core/rotation/menu_problem.h"
#include "core/rotation/partial_menu.h"

#include <cmath>
#include <glpk.h>
#include <map>
#include <optional>
#include <utility>
#include <vector>

namespace lidlark::rotation::oracle {

/// The same problem written for GLPK's mixed-integer solver: a 0/1 column for each entry, a column
/// for each segment of each curve (as much of it as is filled; concave, so it fills in order).
class GlpkMenu
{
public:
    GlpkMenu(const MenuProblem &problem, std::size_t offers, std::size_t givenWay)
        : GlpkMenu(problem, offers)
    {
        addConditions(givenWay);
    }
    /// A day of the text format: minutes, mess and families alone.
    GlpkMenu(const MenuProblem &problem, const ChoiceRules &rules) : GlpkMenu(problem, rules.offers)
    {
        Row minutes;
        for (std::size_t i = 0; i < problem.entries.size(); ++i)
            minutes.emplace_back(static_cast<int>(i) + 1, problem.entries[i].minutes);
        addRow(minutes, GLP_UP, rules.minutes);
        addRow(rowOf([](const Entry &entry) { return entry.isMessy; }), GLP_UP, rules.messyMost);
        addFamilies();
    }
    GlpkMenu(const GlpkMenu &) = delete;
    GlpkMenu &operator=(const GlpkMenu &) = delete;
    ~GlpkMenu() { glp_delete_prob(m_lp); }

    /// @returns nothing when GLPK finds the problem infeasible.
    std::optional<int> optimum()
    {
        glp_iocp options;
        glp_init_iocp(&options);
        options.presolve = GLP_ON;
        options.msg_lev = GLP_MSG_OFF;
        options.mip_gap = 0.0;
        const int failed = glp_intopt(m_lp, &options);
        if (failed != 0 || glp_mip_status(m_lp) != GLP_OPT)
            return std::nullopt;
        return static_cast<int>(std::lround(glp_mip_obj_val(m_lp)));
    }

private:
    using Row = std::vector<std::pair<int, double>>;

    GlpkMenu(const MenuProblem &problem, std::size_t offers)
        : m_problem(problem), m_lp(glp_create_prob())
    {
        glp_set_obj_dir(m_lp, GLP_MAX);
        for (const Entry &entry : problem.entries) {
            const int column = glp_add_cols(m_lp, 1);
            glp_set_col_kind(m_lp, column, GLP_BV);
            glp_set_obj_coef(m_lp, column, entry.worth);
        }
        const double k = static_cast<double>(offers);
        addRow(rowOf([](const Entry &) { return true; }), GLP_FX, k);
        addCoverage();
        addStock();
    }

    template <class Trait> Row rowOf(const Trait &trait) const
    {
        Row row;
        for (std::size_t i = 0; i < m_problem.entries.size(); ++i) {
            if (trait(m_problem.entries[i]))
                row.emplace_back(static_cast<int>(i) + 1, 1.0);
        }
        return row;
    }

    void addRow(const Row &row, int kind, double bound)
    {
        std::vector<int> columns{0};
        std::vector<double> factors{0.0};
        for (const auto &[column, factor] : row) {
            columns.push_back(column);
            factors.push_back(factor);
        }
        const int number = glp_add_rows(m_lp, 1);
        glp_set_row_bnds(m_lp, number, kind, bound, bound);
        glp_set_mat_row(m_lp, number, static_cast<int>(row.size()), columns.data(), factors.data());
    }

    /// Filled segments of a curve together are at most the minutes of the chosen.
    void addCoverage()
    {
        for (std::size_t curve = 0; curve < m_problem.curves.size(); ++curve) {
            std::map<int, double> factors;
            for (std::size_t i = 0; i < m_problem.entries.size(); ++i) {
                for (const Amount &amount : m_problem.entries[i].amounts) {
                    if (amount.curve == static_cast<int>(curve))
                        factors[static_cast<int>(i) + 1] -= amount.minutes;
                }
            }
            for (const Segment &segment : m_problem.curves[curve]) {
                const int column = glp_add_cols(m_lp, 1);
                glp_set_col_bnds(m_lp, column, GLP_DB, 0.0, segment.width);
                glp_set_obj_coef(m_lp, column, segment.slope);
                factors[column] = 1.0;
            }
            addRow({factors.begin(), factors.end()}, GLP_UP, 0.0);
        }
    }

    void addStock()
    {
        for (std::size_t item = 0; item < m_problem.stock.size(); ++item) {
            std::map<int, double> factors;
            for (std::size_t i = 0; i < m_problem.entries.size(); ++i) {
                for (const Need &need : m_problem.entries[i].needs) {
                    if (need.item == static_cast<int>(item))
                        factors[static_cast<int>(i) + 1] += need.pieces;
                }
            }
            addRow({factors.begin(), factors.end()}, GLP_UP, m_problem.stock[item]);
        }
    }

    void addConditions(std::size_t givenWay)
    {
        if (givenWay < 1)
            addRow(rowOf([](const Entry &entry) { return entry.isNew; }), GLP_UP, 1.0);
        if (givenWay < 2)
            addRow(rowOf([](const Entry &entry) { return entry.isKnownFriend; }), GLP_LO, 1.0);
        if (givenWay < 3)
            addRow(rowOf([](const Entry &entry) { return entry.isWithoutTable; }), GLP_LO, 1.0);
        if (givenWay < 5)
            addRow(rowOf([](const Entry &entry) { return entry.isMessy; }), GLP_UP, 1.0);
        addRow(rowOf([](const Entry &entry) { return entry.isHeldBack; }), GLP_UP, 0.0);
        if (givenWay < 4)
            addFamilies();
    }

    void addFamilies()
    {
        std::map<int, Row> families;
        for (std::size_t i = 0; i < m_problem.entries.size(); ++i) {
            if (m_problem.entries[i].family != noFamily)
                families[m_problem.entries[i].family].emplace_back(static_cast<int>(i) + 1, 1.0);
        }
        for (const auto &[family, row] : families)
            addRow(row, GLP_UP, 1.0);
    }

    const MenuProblem &m_problem;
    glp_prob *m_lp;
};

} // namespace lidlark::rotation::oracle
