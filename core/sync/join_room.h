#pragma once

#include "core/sync/join_code.h"
#include "core/sync/post.h"
#include "core/sync/storage.h"

#include <optional>
#include <string>
#include <string_view>

namespace lidlark::sync {

/// What two phones leave for each other under one joining code (FORMAT.md, "Joining"): files that
/// only who knows the code can find and read.
class JoinRoom
{
public:
    JoinRoom(const JoinSecret &secret, Storage &storage) : m_secret(secret), m_storage(storage) {}

    /// @param what "answer", "welcome".
    /// @returns nothing inside where there is none, or it is not of this code.
    Answer<std::optional<std::string>> read(std::string_view what);
    /// Brings bytes that were sealed with `seal`. @returns false inside where others lie there.
    Answer<bool> leave(std::string_view what, std::string_view sealedBytes, Entropy &entropy);
    /// What is left, goes.
    Answer<bool> clear();

    [[nodiscard]] static std::string seal(const JoinSecret &secret, std::string_view what,
                                          std::string_view text, Entropy &entropy);

private:
    [[nodiscard]] Place place(std::string_view what) const;

    JoinSecret m_secret;
    Storage &m_storage;
};

} // namespace lidlark::sync
