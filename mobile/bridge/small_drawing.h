#pragma once

#include <QString>

#include "core/catalogue/catalogue.h"

namespace lidlark::mobile {

/// A whole scene cannot be read at the size of a row: the thing played with can. Where nothing is
/// played with, the scene after all.
QString smallDrawingOf(const catalogue::Activity &activity, const catalogue::Catalogue &catalogue);

} // namespace lidlark::mobile
