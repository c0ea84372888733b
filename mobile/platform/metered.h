#pragma once

namespace lidlark::mobile {

/// Whether the network in use is paid for by what goes over it, as far as the system tells.
/// @returns false where nobody can tell.
[[nodiscard]] bool networkIsMetered();

} // namespace lidlark::mobile
