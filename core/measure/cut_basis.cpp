#include "core/measure/cut_basis.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace lidlark::measure {

namespace {

/// The inverse of the four walls' normals, each with -1 for the cut: what each wall has to say
/// about the shift and, in the last line, about the cut.
const std::array<std::array<double, walls>, walls> &sharesOfWalls()
{
    // Rim: z. Slope and the two round ones, at 45 degrees: solved by hand. With c = sqrt(1/2)
    // and the pressures p of a balance, p_rim = c p_slope, 2 c p_round = c p_slope.
    static const auto shares = [] {
        constexpr double c = std::numbers::sqrt2 / 2;
        constexpr double slopePart = 1 / (c + 1 + 1);
        constexpr std::array<double, walls> cut{-c * slopePart, -slopePart, -slopePart / 2,
                                                -slopePart / 2};
        std::array<std::array<double, walls>, walls> all{};
        for (std::size_t wall = 0; wall < walls; ++wall) {
            // Each wall in turn is moved by one; the others say where the middle goes.
            const double v = cut[wall];
            const double z = v + (wall == 0 ? 1 : 0);
            const double x = (2 * v + (wall >= 2 ? 1 : 0)) / (2 * c);
            const double y = wall == 2 ? 1 / (2 * c) : wall == 3 ? -1 / (2 * c) : 0;
            all[0][wall] = x;
            all[1][wall] = y;
            all[2][wall] = z;
            all[3][wall] = v;
        }
        return all;
    }();
    return shares;
}

/// side * unknown <= most.
Constraint limit(std::size_t unknown, double side, const TurnLimits &limits)
{
    Constraint row;
    row.coefficients[unknown] = side;
    row.right = limits.tilt + (unknown == aboutZ ? limits.spin : 0);
    return row;
}

} // namespace

void CutBasis::begin(const std::array<Constraint, walls> &held, const TurnLimits &limits)
{
    std::ranges::copy(held, m_rows.begin());
    const std::array<std::array<double, walls>, walls> &shares = sharesOfWalls();
    for (auto &row : m_inverse)
        row.fill(0);
    constexpr std::array<std::size_t, walls> free{0, 1, 2, cutAt}; // the shift and the cut
    for (std::size_t i = 0; i < walls; ++i)
        std::ranges::copy(shares[i], m_inverse[free[i]].begin());
    for (std::size_t k = 0; k < 3; ++k) {
        const std::size_t unknown = firstTurn + k;
        double moment = 0;
        for (std::size_t wall = 0; wall < walls; ++wall)
            moment -= shares[3][wall] * m_rows[wall].coefficients[unknown];
        const double side = moment > 0 ? -1 : 1;
        m_rows[walls + k] = limit(unknown, side, limits);
        m_inverse[unknown][walls + k] = side;
        for (std::size_t i = 0; i < walls; ++i) {
            double sum = 0;
            for (std::size_t wall = 0; wall < walls; ++wall)
                sum += shares[i][wall] * m_rows[wall].coefficients[unknown];
            m_inverse[free[i]][walls + k] = -side * sum;
        }
    }
    findUnknowns();
}

void CutBasis::findUnknowns()
{
    for (std::size_t i = 0; i < unknowns; ++i) {
        double sum = 0;
        for (std::size_t k = 0; k < unknowns; ++k)
            sum += m_inverse[i][k] * m_rows[k].right;
        m_unknown[i] = sum;
    }
}

bool CutBasis::enter(const Constraint &row)
{
    Row share{};
    for (std::size_t k = 0; k < unknowns; ++k) {
        for (std::size_t i = 0; i < unknowns; ++i)
            share[k] += row.coefficients[i] * m_inverse[i][k];
    }
    std::size_t leaves = unknowns;
    double least = 0;
    for (std::size_t k = 0; k < unknowns; ++k) {
        if (share[k] <= 1e-11)
            continue;
        const double ratio = pressure(k) / share[k];
        if (leaves == unknowns || ratio < least) {
            leaves = k;
            least = ratio;
        }
    }
    if (leaves == unknowns)
        return false;
    for (Row &line : m_inverse) {
        const double column = line[leaves] / share[leaves];
        for (std::size_t k = 0; k < unknowns; ++k)
            line[k] -= share[k] * column;
        line[leaves] = column;
    }
    m_rows[leaves] = row;
    findUnknowns();
    return true;
}

double CutBasis::excessOf(const Constraint &row) const
{
    double sum = -row.right;
    for (std::size_t i = 0; i < unknowns; ++i)
        sum += row.coefficients[i] * m_unknown[i];
    return sum;
}

std::optional<Constraint> CutBasis::limitPassed(const TurnLimits &limits) const
{
    constexpr double rounding = 1e-9;
    for (std::size_t i = firstTurn; i < cutAt; ++i) {
        Constraint row = limit(i, m_unknown[i] > 0 ? 1 : -1, limits);
        row.excess = excessOf(row);
        if (row.excess > rounding)
            return row;
    }
    return std::nullopt;
}

double CutBasis::meanOf(double Constraint::*what) const
{
    double sum = 0;
    for (std::size_t i = 0; i < unknowns; ++i)
        sum += pressure(i) * m_rows[i].*what;
    return sum;
}

} // namespace lidlark::measure
