#pragma once

#include "core/rotation/plan_rules.h"

#include <algorithm>
#include <cmath>
#include <glpk.h>
#include <map>
#include <optional>
#include <utility>
#include <vector>

namespace lidlark::rotation::oracle {

/// A mixed-integer program with columns from zero up, in terms that every solver takes.
struct LinearProgram {
    struct Column {
        double factor = 0; ///< In what is maximised.
        double most = 1;
        bool isWhole = false;
    };
    struct Row {
        std::vector<int> columns; ///< Counted from 0.
        std::vector<double> factors;
        char kind = 'L'; ///< L: at most the bound, G: at least, E: equal.
        double bound = 0;
    };
    std::vector<Column> columns;
    std::vector<Row> rows;
};

/// A plan of several days as a program, written from reference/rotation.md and the side conditions
/// alone: a 0/1 column for each entry on each day, one for each segment of each curve (as much of
/// it as is filled; concave, so it fills in order). It throws no days together.
class PlanProgram
{
public:
    PlanProgram(const MenuProblem &problem, const PlanRules &rules)
        : m_problem(problem), m_rules(rules)
    {
        for (const Entry &entry : problem.entries) {
            // The stock rows say so too: it saves the solvers some time.
            const double most = wantsTooMuch(entry) ? 0 : 1;
            for (std::size_t day = 0; day < rules.days.size(); ++day)
                addColumn({static_cast<double>(entry.worth), most, true});
        }
        addCoverage();
        for (std::size_t i = 0; i < problem.entries.size() && rules.days.size() > 1; ++i)
            addOnce(i);
        for (std::size_t day = 0; day < rules.days.size(); ++day)
            addDay(day);
        for (std::size_t day = 0; day < rules.pinned.size(); ++day) {
            for (const std::size_t entry : rules.pinned[day])
                addRow({{columnOf(entry, day), 1}}, 'E', 1);
        }
    }
    [[nodiscard]] const LinearProgram &program() const { return m_program; }

private:
    using Factors = std::map<int, double>;

    [[nodiscard]] int columnOf(std::size_t entry, std::size_t day) const
    {
        return static_cast<int>(entry * m_rules.days.size() + day);
    }
    int addColumn(const LinearProgram::Column &column)
    {
        m_program.columns.push_back(column);
        return static_cast<int>(m_program.columns.size()) - 1;
    }
    void addRow(const Factors &factors, char kind, double bound)
    {
        LinearProgram::Row row{{}, {}, kind, bound};
        for (const auto &[column, factor] : factors) {
            row.columns.push_back(column);
            row.factors.push_back(factor);
        }
        m_program.rows.push_back(std::move(row));
    }

    [[nodiscard]] bool wantsTooMuch(const Entry &entry) const
    {
        return std::ranges::any_of(entry.needs, [&](const Need &need) {
            return need.pieces > m_problem.stock[static_cast<std::size_t>(need.item)];
        });
    }

    void addCoverage()
    {
        std::vector<Factors> rows(m_problem.curves.size());
        for (std::size_t i = 0; i < m_problem.entries.size(); ++i) {
            for (const Amount &amount : m_problem.entries[i].amounts) {
                for (std::size_t day = 0; day < m_rules.days.size(); ++day)
                    rows[static_cast<std::size_t>(amount.curve)][columnOf(i, day)] -=
                        amount.minutes;
            }
        }
        for (std::size_t curve = 0; curve < rows.size(); ++curve) {
            for (const Segment &segment : m_problem.curves[curve]) {
                const LinearProgram::Column filled{static_cast<double>(segment.slope),
                                                   static_cast<double>(segment.width), false};
                rows[curve][addColumn(filled)] = 1;
            }
            addRow(rows[curve], 'L', 0);
        }
    }

    void addOnce(std::size_t entry)
    {
        Factors row;
        for (std::size_t day = 0; day < m_rules.days.size(); ++day)
            row[columnOf(entry, day)] = 1;
        addRow(row, 'L', 1);
    }

    template <class Of> Factors rowOf(std::size_t day, const Of &of) const
    {
        Factors row;
        for (std::size_t i = 0; i < m_problem.entries.size(); ++i) {
            if (const double factor = of(m_problem.entries[i]); factor != 0)
                row[columnOf(i, day)] = factor;
        }
        return row;
    }

    void addDay(std::size_t day)
    {
        const ChoiceRules &rules = m_rules.days[day];
        const auto holds = [&](SideCondition one) { return rules.inForce.holds(one); };
        const auto has = [&](bool Entry::*trait) {
            return rowOf(day, [trait](const Entry &entry) { return entry.*trait ? 1.0 : 0.0; });
        };
        addRow(rowOf(day, [](const Entry &) { return 1.0; }), 'E',
               static_cast<double>(rules.offers));
        addRow(rowOf(day, [](const Entry &entry) { return double(entry.minutes); }), 'L',
               rules.minutes);
        addRow(has(&Entry::isHeldBack), 'L', static_cast<double>(rules.heldBackMost));
        if (holds(SideCondition::OneNew))
            addRow(has(&Entry::isNew), 'L', 1);
        if (holds(SideCondition::OneMess))
            addRow(has(&Entry::isMessy), 'L', rules.messyMost);
        if (holds(SideCondition::KnownFriend))
            addRow(has(&Entry::isKnownFriend), 'G', 1);
        if (holds(SideCondition::WithoutTable))
            addRow(has(&Entry::isWithoutTable), 'G', 1);
        for (std::size_t item = 0; item < m_problem.stock.size(); ++item)
            addRow(rowOf(day, [item](const Entry &entry) { return piecesOf(entry, item); }), 'L',
                   m_problem.stock[item]);
        if (holds(SideCondition::Family))
            addFamilies(day);
    }

    static double piecesOf(const Entry &entry, std::size_t item)
    {
        double pieces = 0;
        for (const Need &need : entry.needs)
            pieces += static_cast<std::size_t>(need.item) == item ? need.pieces : 0;
        return pieces;
    }

    void addFamilies(std::size_t day)
    {
        std::map<int, Factors> families;
        for (std::size_t i = 0; i < m_problem.entries.size(); ++i) {
            if (m_problem.entries[i].family != noFamily)
                families[m_problem.entries[i].family][columnOf(i, day)] = 1;
        }
        for (const auto &[family, row] : families)
            addRow(row, 'L', 1);
    }

    const MenuProblem &m_problem;
    const PlanRules &m_rules;
    LinearProgram m_program;
};

/// GLPK's optimum at zero gap; nothing when GLPK finds the program infeasible, or no optimum within
/// so many seconds.
inline std::optional<int> glpkOptimum(const LinearProgram &program, int seconds = 600)
{
    glp_prob *problem = glp_create_prob();
    glp_set_obj_dir(problem, GLP_MAX);
    for (const LinearProgram::Column &column : program.columns) {
        const int number = glp_add_cols(problem, 1);
        glp_set_col_bnds(problem, number, column.most > 0 ? GLP_DB : GLP_FX, 0, column.most);
        glp_set_col_kind(problem, number, column.isWhole ? GLP_IV : GLP_CV);
        glp_set_obj_coef(problem, number, column.factor);
    }
    for (const LinearProgram::Row &row : program.rows) {
        std::vector<int> columns{0}; // GLPK counts from 1
        std::vector<double> factors{0};
        for (std::size_t i = 0; i < row.columns.size(); ++i) {
            columns.push_back(row.columns[i] + 1);
            factors.push_back(row.factors[i]);
        }
        const int number = glp_add_rows(problem, 1);
        const int kind = row.kind == 'L' ? GLP_UP : row.kind == 'G' ? GLP_LO : GLP_FX;
        glp_set_row_bnds(problem, number, kind, row.bound, row.bound);
        glp_set_mat_row(problem, number, static_cast<int>(row.columns.size()), columns.data(),
                        factors.data());
    }
    glp_iocp options;
    glp_init_iocp(&options);
    options.presolve = GLP_ON;
    options.msg_lev = GLP_MSG_OFF;
    options.mip_gap = 0;
    options.tm_lim = 1'000 * seconds;
    const bool solved = glp_intopt(problem, &options) == 0 && glp_mip_status(problem) == GLP_OPT;
    const double value = glp_mip_obj_val(problem);
    glp_delete_prob(problem);
    return solved ? std::optional(static_cast<int>(std::lround(value))) : std::nullopt;
}

} // namespace lidlark::rotation::oracle
