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
Constraint limit(std::size_t unknown, double side, const CutBasis::Limits &limits)
{
    Constraint row;
    row.coefficients[unknown] = side;
    row.right = limits[unknown - firstTurn];
    return row;
}

} // namespace

void CutBasis::begin(const std::array<Constraint, walls> &held, const Limits &limits)
{
    std::ranges::copy(held, m_rows.begin());
    const std::array<std::array<double, walls>, walls> &shares = sharesOfWalls();
    // What the four walls say when column `unknown` is moved to the right.
    const auto said = [&](std::size_t line, std::size_t unknown) {
        double sum = 0;
        for (std::size_t wall = 0; wall < walls; ++wall)
            sum += shares[line][wall] * m_rows[wall].coefficients[unknown];
        return sum;
    };
    for (Row &line : m_inverse)
        line.fill(0);
    // With a coefficient of -1 for each wall the shares would be all; else the last unknown is
    // found first, and the shift from it.
    const double last = 1 / said(walls - 1, cutAt);
    for (std::size_t wall = 0; wall < walls; ++wall) {
        m_inverse[cutAt][wall] = last * shares[walls - 1][wall];
        for (std::size_t i = 0; i < firstTurn; ++i)
            m_inverse[i][wall] = shares[i][wall] - said(i, cutAt) * m_inverse[cutAt][wall];
    }
    for (std::size_t unknown = firstTurn; unknown < cutAt; ++unknown) {
        const double moment = -said(walls - 1, unknown);
        const double side = moment > 0 ? -1 : 1;
        const std::size_t row = walls + unknown - firstTurn;
        m_rows[row] = limit(unknown, side, limits);
        m_inverse[unknown][row] = side;
        m_inverse[cutAt][row] = side * last * moment;
        for (std::size_t i = 0; i < firstTurn; ++i)
            m_inverse[i][row] = -side * said(i, unknown) - said(i, cutAt) * m_inverse[cutAt][row];
    }
    for (std::size_t i = 0; i < unknowns; ++i) {
        m_unknown[i] = 0;
        for (std::size_t k = 0; k < unknowns; ++k)
            m_unknown[i] += m_inverse[i][k] * m_rows[k].right;
    }
}

bool CutBasis::enter(const Constraint &row)
{
    Row share{};
    for (std::size_t i = 0; i < unknowns; ++i) {
        for (std::size_t k = 0; k < share.size(); ++k)
            share[k] += row.coefficients[i] * m_inverse[i][k];
    }
    std::size_t leaves = unknowns;
    double least = 0;
    for (std::size_t k = 0; k < unknowns; ++k) {
        if (share[k] <= 1e-10)
            continue;
        const double ratio = pressure(k) / share[k];
        if (leaves == unknowns || ratio < least) {
            leaves = k;
            least = ratio;
        }
    }
    if (leaves == unknowns)
        return false;
    const double excess = excessOf(row);
    for (std::size_t i = 0; i < unknowns; ++i) {
        Row &line = m_inverse[i];
        const double column = line[leaves] / share[leaves];
        for (std::size_t k = 0; k < line.size(); ++k)
            line[k] -= share[k] * column;
        line[leaves] = column;
        m_unknown[i] -= excess * column;
    }
    m_rows[leaves] = row;
    return true;
}

double CutBasis::excessOf(const Constraint &row) const
{
    double sum = -row.right;
    for (std::size_t i = 0; i < unknowns; ++i)
        sum += row.coefficients[i] * m_unknown[i];
    return sum;
}

std::optional<Constraint> CutBasis::limitPassed(const Limits &limits) const
{
    constexpr double rounding = 1e-9;
    for (std::size_t i = firstTurn; i < cutAt; ++i) {
        if (std::abs(m_unknown[i]) <= limits[i - firstTurn] + rounding)
            continue;
        Constraint row = limit(i, m_unknown[i] > 0 ? 1 : -1, limits);
        row.excess = excessOf(row);
        return row;
    }
    return std::nullopt;
}

} // namespace lidlark::measure
