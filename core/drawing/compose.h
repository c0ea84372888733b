#pragma once

#include "core/drawing/shelf.h"

#include <string>
#include <string_view>
#include <variant>

namespace lidlark::drawing {

/// A scene (viewBox -40 0 400 240) or an item (0 0 96 96) as the text of an SVG file in three
/// printed colours (look.md, section 5). The format of the files is in DEVELOPERS.md, "Drawings".
[[nodiscard]] std::variant<std::string, Fault> compose(const Shelf &shelf, Kind kind,
                                                       std::string_view name);

} // namespace lidlark::drawing
