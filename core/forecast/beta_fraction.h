#pragma once

namespace lidlark::forecast {

/// The continued fraction of the incomplete beta function: I_x(a, b) is x^a y^b / B(a, b) divided
/// by what this gives. Fast and right to a few last places where x is not above a / (a + b).
/// Source: A. Didonato and A. Morris, ACM Algorithm 708 (1992), and the Boost.Math manual,
/// "Incomplete Beta Functions"; both from memory, checked in the tests against 400-digit values. It
/// is the even part of NIST DLMF 8.17.22, in which nothing cancels; evaluated by Lentz's method.
/// @param y 1 - x, given apart to keep its digits.
double betaFraction(double a, double b, double x, double y);

} // namespace lidlark::forecast
