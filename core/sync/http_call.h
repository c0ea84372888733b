#pragma once

#include <cstddef>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lidlark::sync {

/// One request to a server.
struct HttpCall {
    std::string method;
    std::string url;
    std::vector<std::string>
        headers; ///< "Name: value". Credentials and lengths are not among them.
    std::string_view body;
    std::size_t largestBody = 100'000; ///< Bytes of the answer's body that are taken, at most.
};

/// Why a call brought no whole answer.
enum class HttpFault {
    NoAnswer,   ///< Nobody there, or silent for too long.
    CutShort,   ///< The line broke while it came.
    NotTrusted, ///< The certificate is not the server's, too old, or of nobody who is trusted.
    NotHttp,    ///< What answers speaks something else.
    TooLarge,   ///< More than was asked for; the rest was not taken.
    Elsewhere,  ///< It sends on to another place, where nobody is let in with these credentials.
    Stopped     ///< This phone was told to stop.
};

/// What came of a call.
struct HttpAnswer {
    std::optional<HttpFault> fault;
    long status = 0;                            ///< 0 where none came.
    std::map<std::string, std::string> headers; ///< Names in small letters; of two, the last.
    std::string body;                           ///< What came of it, even where it was cut short.

    /// Empty where there is none.
    [[nodiscard]] std::string header(const std::string &name) const
    {
        const auto found = headers.find(name);
        return found != headers.end() ? found->second : std::string();
    }
};

} // namespace lidlark::sync
