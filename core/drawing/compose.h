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

/// Whether a left-handed child gets a scene of its own: every scene but those that say why they go
/// one way only (`one_way`): scissors, lids that unscrew, pages that turn, signs that are written.
[[nodiscard]] bool hasLeftHanded(const Shelf &shelf, std::string_view scene);

/// The scene with helper and working hand exchanged. The tint stays off register to the lower
/// right, so it is not the first picture seen in a mirror. A fault where there is none.
[[nodiscard]] std::variant<std::string, Fault> composeLeftHanded(const Shelf &shelf,
                                                                 std::string_view scene);

} // namespace lidlark::drawing
