#pragma once

#include <optional>
#include <string>

namespace lidlark::sync {

/// How often a call goes on to where it is sent.
inline constexpr int mostRedirects = 3;

/// Whether an answer of @p status sends on to another URL in the same words (RFC 9110, 15.4: 301
/// and 302 let only POST become GET, which is never sent here; 303 always asks for GET).
bool sendsOn(long status);

/// Where a call to @p from goes on that is sent to @p location: only to the same server (another
/// would be handed the credentials), and to a path that ends with the same name. One that does not
/// is a page for people to log in at.
/// @returns nothing where it does not go on.
std::optional<std::string> followed(const std::string &from, const std::string &location);

} // namespace lidlark::sync
