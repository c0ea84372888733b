#pragma once

#include "core/sync/join_code.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <variant>

namespace lidlark::sync {

/// What one phone shows another in the room, as a picture of squares: the joining code, and where
/// the crew's storage is.
struct Invitation {
    JoinSecret secret;
    std::string place; ///< The address of a storage (isPlaceToShow); empty: asked for on the phone.
};

/// Bytes of a place at most: the whole text then still makes squares that a cheap camera can tell.
inline constexpr std::size_t longestPlace = 300;

/// Whether @p place may stand in an invitation: an http or https address (RFC 3986) of printable
/// ASCII with a host, and nothing in it by which anybody could get in: no name or password, no
/// query, no fragment. Empty: yes.
bool isPlaceToShow(std::string_view place);

/// "lidlark-join:1?secret=00112233445566778899&place=https%3A%2F%2Fdav.example%2Fcrew": a URI of
/// our own (RFC 3986), each value percent-encoded, in this order, the place only where there is
/// one.
/// @returns nothing where the place must not be shown.
std::optional<std::string> qrTextOf(const Invitation &invitation);

/// Why a text is no invitation.
enum class InvitationFault {
    Foreign, ///< Something else altogether.
    Newer,   ///< Made by a later Lidlark.
    Damaged  ///< One of ours, but not as it was made.
};

/// Takes only what qrTextOf makes, byte for byte.
std::variant<Invitation, InvitationFault> invitationFromQrText(std::string_view text);

} // namespace lidlark::sync
