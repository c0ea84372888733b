#pragma once

#include <string_view>

namespace lidlark {

/// Whether @p bytes are well-formed UTF-8 without control characters other than tab, line feed and
/// carriage return. Overlong forms, surrogates and values above U+10FFFF are refused.
/// Source: RFC 3629 section 4 (the syntax of UTF-8 byte sequences).
bool isPlainUtf8(std::string_view bytes);

} // namespace lidlark
