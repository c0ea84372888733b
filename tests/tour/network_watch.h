#pragma once

namespace lidlark::test {

/// From here on, until the process ends, no socket to the internet can be made, and each try is
/// counted: a phone without a network, and proof that nobody missed it.
/// @returns false where the kernel does not allow such a watch.
bool watchTheNetwork();
/// How often a socket to the internet (IPv4, IPv6) was asked for since then.
int networkTries();

} // namespace lidlark::test
