#pragma once

#include "core/crew/member.h"
#include "core/sync/crew_book.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lidlark::sync {

/// What a phone is given when it is let in: who is in the crew, and the keys of what it may read.
struct Welcome {
    std::string box;
    crew::Member member; ///< The newcomer, as it was let in.
    std::vector<journal::Event>
        events; ///< Of members and openings, so that it knows whom to trust.
    struct Key {
        Digest epoch{};
        journal::Lane lane;
        DeviceId writer;
        crypto::EpochKey key;
    };
    std::vector<Key> keys;
};

/// A letter that only the newcomer can open.
std::string letterOf(const Welcome &welcome, Entropy &entropy);
/// @returns nothing for a letter to somebody else, or one that is no welcome.
std::optional<Welcome> welcomeIn(std::string_view letter, const crypto::DeviceSecret &secret);

} // namespace lidlark::sync
