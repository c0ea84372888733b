#pragma once

#include "core/measure/pose_program.h"

#include <array>
#include <cstdint>
#include <optional>

namespace lidlark::measure {

constexpr std::size_t unknowns = 7;
constexpr std::size_t firstTurn = 3;
constexpr std::size_t aboutZ = 5;
constexpr std::size_t cutAt = 6; ///< The unknown that is made small.
constexpr std::size_t walls = 4; ///< As many as it takes to hold a body that does not turn.

using Row = std::array<double, unknowns>;

enum class Wall : std::uint8_t { None, Rim, Slope, Round };

/// coefficients . (shift, turn, cut) <= right.
struct Constraint {
    Row coefficients{};
    double right = 0;
    double contactMm = 0; ///< Distance from the middle to the touching point, times the scale.
    double asideMm = 0;   ///< And from the body's z axis.
    double perScale = 0;  ///< What the scale adds to the cut.
    double excess = 0;    ///< By how much it is violated now.
    Wall wall = Wall::None;
    bool isWorst = false; ///< No wall is cut more at this shift and turn.
};

/// The dual simplex method for the program of leastCut: seven constraints that meet in one point,
/// with pressures that balance and are never below zero.
class CutBasis
{
public:
    /// Begins with four walls whose pressures balance as forces (rim, slope, and the round wall at
    /// 45 degrees to both sides), and for each part of the turn the limit that takes up the moment
    /// they leave.
    void begin(const std::array<Constraint, walls> &held, const TurnLimits &limits);
    /// Takes @p row in, and out the one whose pressure would first fall below zero. @returns false
    /// when none would: the rows contradict each other.
    bool enter(const Constraint &row);

    [[nodiscard]] double cut() const { return m_unknown[cutAt]; }
    [[nodiscard]] Vector3 shift() const { return {m_unknown[0], m_unknown[1], m_unknown[2]}; }
    [[nodiscard]] Vector3 turn() const { return {m_unknown[3], m_unknown[4], m_unknown[5]}; }
    [[nodiscard]] const std::array<Constraint, unknowns> &rows() const { return m_rows; }
    [[nodiscard]] double excessOf(const Constraint &row) const;
    /// A limit that the turn has passed.
    [[nodiscard]] std::optional<Constraint> limitPassed(const TurnLimits &limits) const;
    /// The mean over the rows, weighted by their pressures, which sum to 1 over the walls.
    [[nodiscard]] double meanOf(double Constraint::*what) const;

private:
    [[nodiscard]] double pressure(std::size_t row) const { return -m_inverse[cutAt][row]; }
    void findUnknowns();

    std::array<Constraint, unknowns> m_rows{};
    std::array<Row, unknowns> m_inverse{};
    Row m_unknown{};
};

} // namespace lidlark::measure
