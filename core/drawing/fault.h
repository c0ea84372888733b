#pragma once

#include <string>

namespace lidlark::drawing {

/// Why a drawing cannot be composed. Thrown inside core/drawing only; `compose` gives it back.
struct Fault {
    std::string file; ///< "scenes/snip-hedge.yaml"
    int line = 0;     ///< 1-based; 0: the file as a whole.
    std::string reason;

    /// "scenes/snip-hedge.yaml:12: there is no hand "graps"".
    [[nodiscard]] std::string text() const
    {
        return file + (line > 0 ? ":" + std::to_string(line) : "") + ": " + reason;
    }
};

} // namespace lidlark::drawing
