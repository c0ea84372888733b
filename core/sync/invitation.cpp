#include "core/sync/invitation.h"

#include "core/sync/percent.h"

#include <algorithm>

namespace lidlark::sync {

namespace {

constexpr std::string_view scheme = "lidlark-join:";
constexpr std::string_view formatAndSecret = "lidlark-join:1?secret=";
constexpr std::string_view beforePlace = "&place=";
constexpr std::string_view hexDigits = "0123456789abcdef";
constexpr std::size_t secretDigits = JoinSecret::size * 2;

std::string hexadecimal(const JoinSecret &secret)
{
    std::string text;
    for (const std::uint8_t byte : secret.bytes()) {
        text.push_back(hexDigits[byte >> 4U]);
        text.push_back(hexDigits[byte & 15U]);
    }
    return text;
}

std::optional<JoinSecret> secretFrom(std::string_view digits)
{
    if (digits.size() != secretDigits)
        return std::nullopt;
    std::array<std::uint8_t, JoinSecret::size> bytes{};
    for (std::size_t i = 0; i < bytes.size(); ++i) {
        const std::size_t high = hexDigits.find(digits[2 * i]);
        const std::size_t low = hexDigits.find(digits[2 * i + 1]);
        if (high == std::string_view::npos || low == std::string_view::npos)
            return std::nullopt;
        bytes[i] = static_cast<std::uint8_t>(high << 4U | low);
    }
    return JoinSecret(bytes);
}

/// What follows the scheme of an address; nothing where it is none of a server.
std::optional<std::string_view> afterScheme(std::string_view place)
{
    for (const std::string_view known : {"https://", "http://"}) {
        if (place.starts_with(known))
            return place.substr(known.size());
    }
    return std::nullopt;
}

/// Ours, of another format: "lidlark-join:2?...".
bool isNewer(std::string_view text)
{
    const std::string_view number = text.substr(scheme.size(), text.find('?') - scheme.size());
    const auto isDigit = [](char c) { return c >= '0' && c <= '9'; };
    return text.find('?') != std::string_view::npos && !number.empty() && number != "1" &&
           number.front() != '0' && std::ranges::all_of(number, isDigit);
}

} // namespace

bool isPlaceToShow(std::string_view place)
{
    if (place.empty())
        return true;
    const auto isPrintable = [](char c) { return c > ' ' && c <= '~'; };
    const auto rest = afterScheme(place);
    if (!rest || place.size() > longestPlace || !std::ranges::all_of(place, isPrintable))
        return false;
    const std::string_view authority = rest->substr(0, rest->find('/'));
    return !authority.empty() && authority.front() != ':' &&
           rest->find_first_of("?#\\") == std::string_view::npos &&
           authority.find('@') == std::string_view::npos;
}

std::optional<std::string> qrTextOf(const Invitation &invitation)
{
    if (!isPlaceToShow(invitation.place))
        return std::nullopt;
    std::string text = std::string(formatAndSecret) + hexadecimal(invitation.secret);
    if (!invitation.place.empty())
        text += std::string(beforePlace) + percentEncoded(invitation.place);
    return text;
}

std::variant<Invitation, InvitationFault> invitationFromQrText(std::string_view text)
{
    if (!text.starts_with(scheme))
        return InvitationFault::Foreign;
    if (isNewer(text))
        return InvitationFault::Newer;
    if (!text.starts_with(formatAndSecret))
        return InvitationFault::Damaged;
    const std::string_view rest = text.substr(formatAndSecret.size());
    const auto secret = secretFrom(rest.substr(0, secretDigits));
    if (!secret)
        return InvitationFault::Damaged;
    const std::string_view end = rest.substr(secretDigits);
    if (end.empty())
        return Invitation{*secret, {}};
    // Three bytes for each of the place at most, so a hostile text is not even read.
    if (!end.starts_with(beforePlace) || end.size() > beforePlace.size() + 3 * longestPlace)
        return InvitationFault::Damaged;
    const auto place = percentDecoded(end.substr(beforePlace.size()));
    if (!place || place->empty() || !isPlaceToShow(*place))
        return InvitationFault::Damaged;
    return Invitation{*secret, *place};
}

} // namespace lidlark::sync
