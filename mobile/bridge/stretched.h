#pragma once

#include <QString>

#include "core/catalogue/catalogue.h"

namespace lidlark::mobile {

/// A text as long as its translation might be: 40 % longer, accents on its vowels, its %1 and %n
/// and numbers as they were. It can still be read, so that a screen which cuts it is seen.
QString stretched(const QString &text);

/// The catalogue with all that a family reads stretched.
catalogue::Catalogue stretched(const catalogue::Catalogue &english);

} // namespace lidlark::mobile
