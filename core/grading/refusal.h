#pragma once

#include "core/base/result.h"

#include <string>
#include <string_view>

namespace lidlark::grading {

/// A size that means something for one kind of thing.
struct Span {
    double low = 0;
    double high = 0;

    /// False for what is no number, too.
    [[nodiscard]] constexpr bool has(double value) const { return value >= low && value <= high; }
};

/// ErrorCode::Invalid with "field: reason"; the field is named as in a catalogue file.
inline Error refusal(std::string_view field, std::string_view reason)
{
    return {ErrorCode::Invalid, std::string(field) + ": " + std::string(reason)};
}

} // namespace lidlark::grading
