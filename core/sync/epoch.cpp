#include "core/sync/epoch.h"

#include "core/crypto/keyed_hash.h"

#include <algorithm>

namespace lidlark::sync {

namespace {

constexpr std::string_view sealUse = "lidlark seal 1";
constexpr std::string_view nameUse = "lidlark name 1";

/// Parts cannot run into each other: each begins with its length.
std::string joined(std::initializer_list<std::string_view> parts)
{
    std::string text;
    for (const std::string_view part : parts)
        text.append(std::to_string(part.size())).append(":").append(part);
    return text;
}

Digest nameHash(const Epoch &epoch, std::initializer_list<std::string_view> parts)
{
    return crypto::keyedHash(crypto::derivedKey(epoch.key, nameUse), joined(parts));
}

Tag tagOf(const Epoch &epoch, std::initializer_list<std::string_view> parts)
{
    const Digest hash = nameHash(epoch, parts);
    Tag tag{};
    std::copy_n(hash.begin(), tag.size(), tag.begin());
    return tag;
}

} // namespace

Tag crewTag(const Epoch &epoch)
{
    return tagOf(epoch, {"crew", epoch.crew});
}

Tag laneTag(const Epoch &epoch)
{
    return tagOf(epoch, {"lane", toText(epoch.lane)});
}

Tag deviceTag(const Epoch &epoch, const DeviceId &device)
{
    return tagOf(epoch, {"device", device.value});
}

crypto::SealKey sealKeyOf(const Epoch &epoch)
{
    return crypto::derivedKey(epoch.key, sealUse);
}

std::string folderName(const Epoch &epoch, const DeviceId &device)
{
    return hexOf(nameHash(epoch, {"folder", hexOf(epoch.id), device.value}));
}

std::string segmentName(const Epoch &epoch, const DeviceId &device, std::uint64_t sequence)
{
    return hexOf(nameHash(epoch, {"segment", toText(epoch.lane), hexOf(epoch.id), device.value,
                                  std::to_string(sequence)}));
}

} // namespace lidlark::sync
