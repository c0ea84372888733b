#pragma once

#include <array>
#include <cmath>

namespace lidlark::measure {

struct Vector3 {
    double x = 0;
    double y = 0;
    double z = 0;
};

inline Vector3 operator+(Vector3 a, Vector3 b)
{
    return {a.x + b.x, a.y + b.y, a.z + b.z};
}
inline Vector3 operator-(Vector3 a, Vector3 b)
{
    return {a.x - b.x, a.y - b.y, a.z - b.z};
}
inline Vector3 operator*(double factor, Vector3 a)
{
    return {factor * a.x, factor * a.y, factor * a.z};
}
inline double dot(Vector3 a, Vector3 b)
{
    return a.x * b.x + a.y * b.y + a.z * b.z;
}
inline Vector3 cross(Vector3 a, Vector3 b)
{
    return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}
inline double length(Vector3 a)
{
    return std::sqrt(dot(a, a));
}

/// A rotation as three columns: where the axes of the body come to lie.
struct Turn {
    Vector3 ex{1, 0, 0};
    Vector3 ey{0, 1, 0};
    Vector3 ez{0, 0, 1};

    [[nodiscard]] Vector3 toWorld(Vector3 body) const
    {
        return body.x * ex + body.y * ey + body.z * ez;
    }
    [[nodiscard]] Vector3 toBody(Vector3 world) const
    {
        return {dot(ex, world), dot(ey, world), dot(ez, world)};
    }
};

/// @p by turned further: by |@p about| radians about that axis, in the world's frame.
/// Source: Rodrigues' rotation formula.
inline Turn turned(const Turn &by, Vector3 about)
{
    const double angle = length(about);
    if (angle == 0)
        return by;
    const Vector3 axis = (1 / angle) * about;
    const double sine = std::sin(angle);
    const double cosine = std::cos(angle);
    const auto turn = [&](Vector3 v) {
        return cosine * v + sine * cross(axis, v) + ((1 - cosine) * dot(axis, v)) * axis;
    };
    return {turn(by.ex), turn(by.ey), turn(by.ez)};
}

} // namespace lidlark::measure
