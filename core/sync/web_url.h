#pragma once

#include <optional>
#include <string>

namespace lidlark::sync {

/// The parts of a URL (RFC 3986), scheme and host in small letters, dots of a path worked out.
struct WebUrl {
    std::string scheme;
    std::string host; ///< A numeric IPv6 host stands in brackets.
    std::string port; ///< The scheme's own where none was written.
    std::string path; ///< Begins with a slash; percent-encoded.
    std::string user; ///< As it was before it was percent-encoded.
    std::string password;
    bool hasMore = false; ///< A query or a fragment.

    [[nodiscard]] bool isSameServerAs(const WebUrl &other) const;
    /// Without user, password, query and fragment; the port only where it is not the scheme's own.
    [[nodiscard]] std::string text() const;
};

/// @p text read as libcurl will read it; https where no scheme is written.
/// @returns nothing when it is no URL with a host.
std::optional<WebUrl> readUrl(const std::string &text);

/// Where @p reference leads that was met at @p base (RFC 3986, 5). Credentials are those of the
/// reference alone.
std::optional<WebUrl> readReference(const std::string &base, const std::string &reference);

/// Whether @p host is this machine itself: nothing leaves it on the way there.
bool isThisMachine(const std::string &host);

} // namespace lidlark::sync
