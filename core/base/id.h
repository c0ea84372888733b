#pragma once

#include <compare>
#include <string>

namespace lidlark {

/// Text that names one thing of one sort; ids of different sorts do not mix.
template <class Tag> struct Id {
    std::string value;

    [[nodiscard]] bool empty() const { return value.empty(); }
    auto operator<=>(const Id &) const = default;
};

using ItemId = Id<struct ItemTag>;
using ActivityId = Id<struct ActivityTag>;
using ChildId = Id<struct ChildTag>;
using PersonId = Id<struct PersonTag>;
using HomeId = Id<struct HomeTag>;
using BoxId = Id<struct BoxTag>;
using PlayId = Id<struct PlayTag>;
using DeviceId = Id<struct DeviceTag>;

} // namespace lidlark
