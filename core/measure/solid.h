#pragma once

#include "core/base/enum_names.h"
#include "core/base/result.h"

#include <array>
#include <cstdint>
#include <string_view>
#include <vector>

namespace lidlark::measure {

/// The simple solids by which a rigid thing is measured.
enum class Shape : std::uint8_t { Sphere, Cylinder, Box, Ellipsoid };

inline constexpr EnumNames<Shape, 4> shapeNames{{"sphere", "cylinder", "box", "ellipsoid"}};

/// A rigid thing by its sizes. Made by `solidFrom` alone, so the sizes are always sound.
class Solid
{
public:
    [[nodiscard]] Shape shape() const { return m_shape; }
    /// mm. Sphere: three times the diameter. Cylinder: diameter, diameter, length. Box: the three
    /// edges. Ellipsoid: the three full axes.
    [[nodiscard]] const std::array<double, 3> &sizes() const { return m_sizes; }

    bool operator==(const Solid &) const = default;

private:
    friend Result<Solid> solidFrom(std::string_view, const std::vector<double> &);
    Solid(Shape shape, std::array<double, 3> sizes) : m_shape(shape), m_sizes(sizes) {}

    Shape m_shape;
    std::array<double, 3> m_sizes;
};

inline constexpr double leastMm = 0.1;
inline constexpr double mostMm = 2000;

/// @param shape "sphere" (diameter), "disc" (diameter, thickness), "cylinder" (diameter, length),
/// "box" (three edges) or "ellipsoid" (three full axes). @param mm as many sizes as the shape has.
/// @returns Invalid with the reason for an unknown shape, a wrong number of sizes, a size that is
/// no number or not above zero, and "millimetres?" for one below 0.1 or above 2000 mm, which is a
/// slip of units more often than a thing that is played with.
Result<Solid> solidFrom(std::string_view shape, const std::vector<double> &mm);

} // namespace lidlark::measure
