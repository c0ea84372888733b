#pragma once

#include "core/measure/solid.h"

#include <random>
#include <string>
#include <vector>

/// Made-up solids for what has to hold for every solid.
namespace lidlark::measure::samples {

/// A shape's word and its sizes, as `solidFrom` reads them.
struct Measured {
    std::string shape;
    std::vector<double> mm;

    [[nodiscard]] Solid solid() const { return *solidFrom(shape, mm); }

    [[nodiscard]] std::string text() const
    {
        std::string words = shape;
        for (const double size : mm)
            words += " " + std::to_string(size);
        return words;
    }
};

/// The kind goes round with @p number: boxes, cylinders and ellipsoids of 2 to 70 mm, plates, rods,
/// discs, cubes, needles, lenses, and solids that are nearly a simpler one.
inline Measured randomSolid(int number, std::mt19937_64 &random)
{
    const auto mm = [&](double least, double most) {
        return std::uniform_real_distribution<double>(least, most)(random);
    };
    const double edge = mm(2, 70);
    switch (number % 12) {
    case 0:
    case 1:
        return {"box", {edge, mm(2, 70), mm(2, 70)}};
    case 2:
        return {"cylinder", {edge, mm(2, 70)}};
    case 3:
        return {"ellipsoid", {edge, mm(2, 70), mm(2, 70)}};
    case 4:
        return {"box", {edge, mm(10, 70), mm(0.1, 3)}};
    case 5:
        return {"box", {mm(0.2, 6), edge, mm(0.2, 6)}};
    case 6:
        return {"cylinder", {mm(0.1, 14), mm(20, 70)}};
    case 7:
        return {"disc", {mm(10, 45), mm(0.1, 8)}};
    case 8:
        return {"box", {edge, edge * mm(0.999, 1.001), edge}};
    case 9:
        return {"ellipsoid", {mm(20, 70), mm(0.1, 12), mm(0.1, 12)}};
    case 10:
        return {"ellipsoid", {edge, edge * mm(0.98, 1.02), mm(0.1, 12)}};
    default:
        return {"cylinder", {edge, edge * mm(0.7, 1.4)}};
    }
}

} // namespace lidlark::measure::samples
