#include "core/sync/server_address.h"

#include "core/sync/web_url.h"

#include <algorithm>
#include <optional>

namespace lidlark::sync {

namespace {

std::string withoutSpaceAround(const std::string &text)
{
    constexpr std::string_view space = " \t\r\n";
    const std::size_t begin = text.find_first_not_of(space);
    if (begin == std::string::npos)
        return {};
    return text.substr(begin, text.find_last_not_of(space) - begin + 1);
}

bool hasControlCharacter(std::string_view text)
{
    return std::ranges::any_of(
        text, [](unsigned char letter) { return letter < 0x20 || letter == 0x7f; });
}

/// b64token of RFC 6750, 2.1.
bool isToken(std::string_view text)
{
    constexpr std::string_view letters =
        "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-._~+/";
    const std::size_t end = text.find_first_not_of(letters);
    return end != 0 && (end == std::string_view::npos ||
                        text.find_first_not_of('=', end) == std::string_view::npos);
}

std::optional<AddressFault> faultOfCredentials(const ServerAddress &address)
{
    if (!address.bearer.empty() && (!address.user.empty() || !address.password.empty()))
        return AddressFault::TwoCredentials;
    // RFC 7617, 2: the first colon ends the user, and control characters are not allowed.
    if (address.user.find(':') != std::string::npos || hasControlCharacter(address.user) ||
        hasControlCharacter(address.password) ||
        (!address.bearer.empty() && !isToken(address.bearer)))
        return AddressFault::NotSendable;
    return std::nullopt;
}

} // namespace

std::variant<ServerAddress, AddressFault> checkedAddress(const ServerAddress &typed)
{
    const std::optional<WebUrl> url = readUrl(withoutSpaceAround(typed.url));
    if (!url)
        return AddressFault::Unreadable;
    if (url->scheme != "https" && url->scheme != "http")
        return AddressFault::OtherScheme;
    if (url->scheme == "http" && !isThisMachine(url->host))
        return AddressFault::NotSafe;
    if (url->hasMore)
        return AddressFault::HasQuery;

    ServerAddress address = typed;
    address.url = url->text();
    if (!address.url.ends_with('/'))
        address.url += '/';
    // libcurl reads %39 as 9, and 9 as 0.0.0.9: no address would be another one when it is called.
    const std::optional<WebUrl> called = readUrl(address.url);
    if (!called || called->text() != address.url)
        return AddressFault::Unreadable;
    if (!url->user.empty() || !url->password.empty()) {
        if (!typed.user.empty() || !typed.password.empty())
            return AddressFault::TwoCredentials;
        address.user = url->user;
        address.password = url->password;
    }
    if (const auto fault = faultOfCredentials(address))
        return *fault;
    return address;
}

ServerAddress folderIn(const ServerAddress &address, std::string_view name)
{
    ServerAddress inner = address;
    inner.url.append(name).append("/");
    return inner;
}

} // namespace lidlark::sync
