#pragma once

#include "core/sync/storage.h"

#include <map>
#include <random>

namespace samples {

using namespace lidlark::sync;

/// A storage in memory whose wire breaks by chance: before something is done, after it (the answer
/// alone is lost), or in the middle of a file, of which half is kept.
class ShakyStorage final : public Storage
{
public:
    /// @param breaks of 100 calls.
    explicit ShakyStorage(unsigned seed, int breaks) : m_chance(seed), m_breaks(breaks) {}

    std::map<Place, std::string> files;
    int calls = 0;

    void steady() { m_breaks = 0; }
    /// @param breaks of 100 calls from now on.
    void shakeBy(int breaks) { m_breaks = breaks; }

    Answer<bool> makeFolder(const std::string & /*folder*/) override
    {
        return breaks() ? Answer<bool>(Trouble::Unreachable) : Answer<bool>(true);
    }
    Answer<std::vector<std::string>> list(const std::string &folder) override
    {
        if (breaks())
            return Trouble::Unreachable;
        std::vector<std::string> names;
        for (const auto &[place, bytes] : files) {
            if (place.folder == folder)
                names.push_back(place.name);
        }
        return names;
    }
    Answer<std::optional<std::uint64_t>> sizeOf(const Place &place) override
    {
        if (breaks())
            return Trouble::Unreachable;
        const auto found = files.find(place);
        return found == files.end() ? std::optional<std::uint64_t>()
                                    : std::optional<std::uint64_t>(found->second.size());
    }
    Answer<std::optional<std::string>> get(const Place &place) override
    {
        if (breaks())
            return Trouble::Unreachable;
        const auto found = files.find(place);
        return found == files.end() ? std::optional<std::string>() : std::optional(found->second);
    }
    Answer<bool> put(const Place &place, std::string_view bytes) override
    {
        const bool before = breaks();
        const bool middle = breaks();
        if (before)
            return Trouble::Unreachable;
        // One kind of server keeps what had come when the line broke (platform.md, WebDAV).
        files[place] = std::string(middle ? bytes.substr(0, bytes.size() / 2) : bytes);
        // And another says that all is well.
        return middle && m_chance() % 2 == 0 ? Answer<bool>(Trouble::Unreachable)
                                             : Answer<bool>(true);
    }
    Answer<Moved> move(const Place &from, const std::string &name) override
    {
        const bool before = breaks();
        const bool after = breaks();
        if (before)
            return Trouble::Unreachable;
        const auto found = files.find(from);
        if (found == files.end())
            return Trouble::Odd;
        if (!files.emplace(Place{from.folder, name}, found->second).second)
            return Moved::Taken;
        files.erase(from);
        return after ? Answer<Moved>(Trouble::Unreachable) : Answer<Moved>(Moved::Done);
    }
    Answer<bool> remove(const Place &place) override
    {
        if (breaks())
            return Trouble::Unreachable;
        files.erase(place);
        return true;
    }

private:
    bool breaks()
    {
        ++calls;
        return static_cast<int>(m_chance() % 100) < m_breaks;
    }

    std::mt19937 m_chance;
    int m_breaks;
};

} // namespace samples
