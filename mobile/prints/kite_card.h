#pragma once

#include <QSize>

#include "mobile/prints/print_page.h"

class QPainter;

namespace lidlark::mobile {

/// The kite on paper (checkin.md 11): two sides, each A6, black line on white. Nothing on it says
/// whose it is. A child clips a clothes peg on a picture at the edge.
///
/// Both sides are painted in tenths of a millimetre, from the upper left corner. Right-to-left
/// mirrors what stands where, never a picture.
namespace kitecard {

/// A6 upright, tenths of a millimetre. Source: ISO 216:2007, table 1 (A6 is 105 x 148 mm).
inline constexpr QSize size{1050, 1480};

/// The child's side: question, three kites, clouds and bag beside them, the hand.
void paintFront(QPainter &painter);
/// The adult's side: five lines, room for the home's own words, how to use it safely.
void paintBack(QPainter &painter);
/// Both.
PrintPages pages();

} // namespace kitecard

} // namespace lidlark::mobile
