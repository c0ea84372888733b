#pragma once

#include <string>
#include <string_view>
#include <variant>

namespace lidlark::sync {

/// The folder on a server where files are kept, and what opens it.
struct ServerAddress {
    std::string url;  ///< Ends with a slash; holds no credentials.
    std::string user; ///< With a password (RFC 7617); empty for none.
    std::string password;
    std::string bearer; ///< A token in their place (RFC 6750); empty for none.
    std::string
        caFile; ///< PEM: who may sign the server's certificate; empty: whom the system trusts.

    bool operator==(const ServerAddress &) const = default;
};

/// Why something typed or pasted is no address to go to.
enum class AddressFault {
    Unreadable,     ///< Not a URL with a host.
    OtherScheme,    ///< Neither https nor http.
    NotSafe,        ///< http to another machine: whoever is on the way reads the password.
    HasQuery,       ///< A question or a mark after the folder: the address of a page for people.
    TwoCredentials, ///< Two ways to get in, of which only one can be meant.
    NotSendable     ///< User, password or token hold what HTTP cannot carry.
};

/// @p typed as it will be used: the white space around the URL gone, https where no scheme is
/// written, credentials taken out of the URL into their own fields, a slash at its end.
std::variant<ServerAddress, AddressFault> checkedAddress(const ServerAddress &typed);

/// A folder in that of @p address; the same server, the same credentials.
/// @param name of [0-9a-z.].
ServerAddress folderIn(const ServerAddress &address, std::string_view name);

} // namespace lidlark::sync
