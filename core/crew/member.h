#pragma once

#include "core/base/day.h"
#include "core/base/id.h"
#include "core/crew/role.h"
#include "core/crypto/letter.h"
#include "core/crypto/signature.h"
#include "core/journal/event.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>

namespace lidlark::crew {

/// A device of the crew, as it was let in (events.md 10).
struct Member {
    DeviceId device;
    std::string person; ///< Alias.
    Role role = Role::Guest;
    HomeId home;                ///< Empty for a therapist's.
    crypto::PublicKey signer{}; ///< What it signs with.
    crypto::LetterKey letters{};
    std::optional<Day> until = std::nullopt; ///< A guest's last day.
    bool paper = false;      ///< No phone: a recovery sheet, to which every key of the home goes.
    std::string folder = {}; ///< Of a sheet: where on the storage its letters are left.
    DeviceId was = {};       ///< The id under which this phone was known before it was copied.

    bool operator==(const Member &) const = default;
};

/// Highest counter of each lane that is still accepted from a device that was removed; of a lane
/// that is not named, all.
using Accepted = std::map<journal::Lane, std::uint64_t>;

/// The end of a membership.
struct Removal {
    DeviceId device;
    Accepted accepted;

    bool operator==(const Removal &) const = default;
};

std::string fieldsOf(const Member &member);
std::string fieldsOf(const Removal &removal);
/// @returns nothing where a field is missing or astray.
std::optional<Member> memberFrom(const std::string &fields);
std::optional<Removal> removalFrom(const std::string &fields);
/// The same of an event; nothing for another kind.
std::optional<Member> readMember(const journal::Event &event);
std::optional<Removal> readRemoval(const journal::Event &event);

} // namespace lidlark::crew
