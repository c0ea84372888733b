#pragma once

#include <QString>

namespace lidlark::mobile {

/// Words of a language that runs from right to left, whose places (%1, %L1, %n) hold names and
/// numbers in whatever direction: each stays whole and in its place, and a line that begins with a
/// Latin name begins at the right all the same.
QString withWholePlaces(const QString &words);

} // namespace lidlark::mobile
