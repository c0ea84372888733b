#pragma once

namespace lidlark::grading {

/// Dry air of a room: 20 degrees C and 101325 Pa. Sources: density by the gas law with the molar
/// mass of ISO 2533:1975 (28.96 g/mol) and R = 8.314 J/(mol K): 1.204 kg/m3; viscosity by
/// Sutherland's formula of the same standard: 1.81e-5 Pa s. Both constants of the standard are from
/// memory, to be confirmed; tests work out the density anew.
inline constexpr double airDensity = 1.204;     ///< kg/m3.
inline constexpr double airViscosity = 1.81e-5; ///< Pa s.
inline constexpr double airPressure = 101325;   ///< Pa.

/// Standard acceleration of free fall, m/s2. Source: 3rd CGPM (1901), declaration on the unit of
/// mass and on the definition of weight.
inline constexpr double freeFall = 9.80665;

} // namespace lidlark::grading
