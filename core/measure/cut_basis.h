#pragma once

#include "core/measure/convex_body.h"

#include <array>
#include <cstdint>
#include <optional>

namespace lidlark::measure {

constexpr std::size_t unknowns = 7;
constexpr std::size_t firstTurn = 3;
constexpr std::size_t cutAt = 6; ///< The unknown that is made small: the cut, or minus the scale.
constexpr std::size_t walls = 4; ///< As many as it takes to hold a body that does not turn.

/// One place more than there are unknowns: even lengths are quicker to go through.
using Row = std::array<double, unknowns + 1>;

enum class Wall : std::uint8_t { None, Rim, Slope, Round };

/// coefficients . (shift, turn, cut) <= right.
struct Constraint {
    Row coefficients{}; ///< The first three: the wall's outward normal.
    double right = 0;
    Ball ball;         ///< What of the body touches the wall.
    double excess = 0; ///< By how much it is violated now.
    double wallMm = 0;
    Wall wall = Wall::None;
};

/// The dual simplex method for the program of PoseProgram: seven constraints that meet in one
/// point, with pressures that balance and are never below zero.
class CutBasis
{
public:
    /// How far the three parts of the turn may go.
    using Limits = std::array<double, cutAt - firstTurn>;

    /// Begins with four walls whose pressures balance as forces (rim, slope, and the round wall at
    /// 45 degrees to both sides), and for each part of the turn the limit that takes up the moment
    /// they leave.
    void begin(const std::array<Constraint, walls> &held, const Limits &limits);
    /// Takes @p row in, and out the one whose pressure would first fall below zero. @returns false
    /// when none would: the rows contradict each other.
    bool enter(const Constraint &row);

    [[nodiscard]] double cut() const { return m_unknown[cutAt]; }
    [[nodiscard]] Vector3 shift() const { return {m_unknown[0], m_unknown[1], m_unknown[2]}; }
    [[nodiscard]] Vector3 turn() const { return {m_unknown[3], m_unknown[4], m_unknown[5]}; }
    [[nodiscard]] const std::array<Constraint, unknowns> &rows() const { return m_rows; }
    [[nodiscard]] double pressure(std::size_t row) const { return -m_inverse[cutAt][row]; }
    [[nodiscard]] double excessOf(const Constraint &row) const;
    /// A limit that the turn has passed.
    [[nodiscard]] std::optional<Constraint> limitPassed(const Limits &limits) const;

private:
    std::array<Constraint, unknowns> m_rows{};
    std::array<Row, unknowns> m_inverse{};
    Row m_unknown{};
};

} // namespace lidlark::measure
