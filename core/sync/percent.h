#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace lidlark::sync {

/// @p text with every byte but letters, digits and "-._~" written as a percent sign and two capital
/// hexadecimal digits. Source: RFC 3986, 2.1 and 2.3.
std::string percentEncoded(std::string_view text);

/// @returns nothing where @p text is not what percentEncoded makes of some text.
std::optional<std::string> percentDecoded(std::string_view text);

} // namespace lidlark::sync
