#include "core/measure/pose_program.h"

#include "core/measure/cut_basis.h"
#include "core/measure/placed_body.h"
#include "core/measure/test_cylinder.h"

#include <algorithm>
#include <numbers>

namespace lidlark::measure {

namespace {

constexpr double radiusMm = cylinderDiameterMm / 2;
/// Depth below the rim at the axis; the bottom falls one for one towards +x.
constexpr double middleDepthMm = (leastDepthMm + mostDepthMm) / 2;
constexpr double aslant = std::numbers::sqrt2 / 2;
constexpr Vector3 rim{0, 0, 1};
constexpr Vector3 slope{-aslant, 0, -aslant};
constexpr double slopeMm = middleDepthMm * aslant;

/// A curved rim that all but fills the bore touches it in ever more points: some hundreds are met.
constexpr int mostPivots = 400;
constexpr double exactEnoughMm = 1e-4; ///< For a pose's scale.
constexpr double closeEnoughMm = 1e-3; ///< For the cut in a cell.
constexpr double endless = 1e9;

/// The linear program of leastCut, or without a scale that of scaleInPose.
class PoseProgram
{
public:
    PoseProgram(const ConvexBody &body, const OrientationCell &cell, double scale)
        : m_cell(cell), m_scale(scale), m_limits{cell.tilt, cell.tilt, cell.spin},
          m_rates(cell.middle.rates()), m_placed(body, cell.middle.turn())
    {
        m_basis.begin({touching(Wall::Rim, rim, 0), touching(Wall::Slope, slope, slopeMm),
                       touching(Wall::Round, {aslant, aslant, 0}, radiusMm),
                       touching(Wall::Round, {aslant, -aslant, 0}, radiusMm)},
                      m_limits);
        place();
    }

    LeastCut leastCut()
    {
        double atMost = endless;
        double tried = 0;
        for (int pivots = 0; pivots < mostPivots; ++pivots) {
            if (m_basis.cut() > tried) {
                if (balance().forbids(m_cell, m_scale))
                    return ending(atMost, true);
                tried = 1.3 * m_basis.cut();
            }
            const Violation found = mostViolated();
            atMost = found.isWorst ? m_basis.cut() + found.row.excess : endless;
            if (atMost < 0 || atMost - m_basis.cut() < closeEnoughMm || !m_basis.enter(found.row))
                break;
            place();
        }
        return ending(atMost, balance().forbids(m_cell, m_scale));
    }

    double largestScale(double least)
    {
        for (int pivots = 0; pivots < mostPivots && scale() >= least; ++pivots) {
            const Violation found = mostViolated();
            if (found.isWorst && found.row.excess < exactEnoughMm)
                // A ball of the cylinder's own radius lies inside it: shrinking towards that ball's
                // middle takes a body out of a wall that it cuts.
                return scale() / (1 + std::max(0.0, found.row.excess) / radiusMm);
            if (!m_basis.enter(found.row))
                return 0;
            place();
        }
        return 0;
    }

private:
    struct Violation {
        Constraint row;
        bool isWorst = false; ///< No wall is cut more at this shift and turn.
    };

    [[nodiscard]] LeastCut ending(double atMost, bool isForbidden) const
    {
        const Vector3 turn = m_basis.turn();
        const Orientation &from = m_cell.middle;
        return {m_basis.cut(),
                atMost,
                {from.tiltX + turn.x, from.tiltY + turn.y, from.spin + turn.z},
                balance(),
                isForbidden};
    }

    [[nodiscard]] bool seeksScale() const { return m_scale == 0; }
    [[nodiscard]] double scale() const { return seeksScale() ? -m_basis.cut() : m_scale; }

    void place()
    {
        const Vector3 turn = m_basis.turn();
        m_placed.place(scale(), turn.x * m_rates[0] + turn.y * m_rates[1] + turn.z * m_rates[2],
                       m_basis.shift());
    }

    [[nodiscard]] Constraint touching(Wall wall, Vector3 normal, double wallMm) const
    {
        const Vector3 inward = m_placed.inBody(normal);
        Constraint row;
        row.ball = m_placed.reaching(normal);
        row.wallMm = wallMm;
        row.wall = wall;
        const double reach = row.ball.radius + dot(row.ball.middle, inward);
        row.coefficients = {normal.x, normal.y, normal.z};
        if (seeksScale()) {
            row.coefficients[cutAt] = -reach;
            row.right = wallMm;
        } else {
            const Vector3 moment = m_scale * cross(row.ball.middle, inward);
            for (std::size_t i = 0; i < m_rates.size(); ++i)
                row.coefficients[firstTurn + i] = dot(m_rates[i], moment);
            row.coefficients[cutAt] = -1;
            row.right = wallMm - m_scale * reach;
        }
        row.excess = m_basis.excessOf(row);
        return row;
    }

    [[nodiscard]] Violation mostViolated() const
    {
        // Limits first: a cut that is found beyond them bounds nothing from above.
        if (const std::optional<Constraint> beyond = m_basis.limitPassed(m_limits))
            return {*beyond, false};
        Violation worst{touching(Wall::Rim, rim, 0), true};
        const auto consider = [&worst](const Constraint &row) {
            if (row.excess > worst.row.excess)
                worst.row = row;
        };
        consider(touching(Wall::Slope, slope, slopeMm));
        consider(touching(Wall::Round, m_placed.furthestOut(), radiusMm));
        return worst;
    }

    [[nodiscard]] Balance balance() const
    {
        Balance balance;
        for (std::size_t i = 0; i < unknowns; ++i) {
            const Constraint &row = m_basis.rows()[i];
            if (row.wall == Wall::None || m_basis.pressure(i) <= 0)
                continue;
            const Vector3 outward{row.coefficients[0], row.coefficients[1], row.coefficients[2]};
            balance.press(m_basis.pressure(i), outward, row.wallMm, row.ball);
        }
        return balance;
    }

    OrientationCell m_cell;
    double m_scale; ///< 0: to be found.
    CutBasis::Limits m_limits;
    std::array<Vector3, 3> m_rates;
    PlacedBody m_placed;
    CutBasis m_basis;
};

} // namespace

LeastCut leastCut(const ConvexBody &body, const OrientationCell &cell, double scale)
{
    return PoseProgram(body, cell, scale).leastCut();
}

double scaleInPose(const ConvexBody &body, const Orientation &lying, double least)
{
    return PoseProgram(body, {lying, 0, 0}, 0).largestScale(least);
}

} // namespace lidlark::measure
