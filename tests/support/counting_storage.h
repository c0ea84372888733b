#pragma once

#include "core/sync/storage.h"

#include <algorithm>
#include <map>
#include <set>

namespace lidlark::test {

/// What a storage was asked, and how much of it were files.
struct StorageCounts {
    std::map<std::string, std::uint64_t> requests; ///< By the method a WebDAV server is asked with.
    std::uint64_t fileBytesUp = 0;
    std::uint64_t fileBytesDown = 0;
    std::size_t longestListing = 0; ///< Names.

    [[nodiscard]] std::uint64_t all() const
    {
        std::uint64_t sum = 0;
        for (const auto &[method, times] : requests)
            sum += times;
        return sum;
    }
    StorageCounts &operator+=(const StorageCounts &other)
    {
        for (const auto &[method, times] : other.requests)
            requests[method] += times;
        fileBytesUp += other.fileBytesUp;
        fileBytesDown += other.fileBytesDown;
        longestListing = std::max(longestListing, other.longestListing);
        return *this;
    }
};

/// Counts what goes through to another storage. One a visit, as a phone has one line a visit: a
/// folder that was made is not asked for again (webdav_storage.h).
class CountingStorage final : public sync::Storage
{
public:
    explicit CountingStorage(sync::Storage &inner) : m_inner(inner) {}

    [[nodiscard]] const StorageCounts &counts() const { return m_counts; }

    sync::Answer<bool> makeFolder(const std::string &folder) override
    {
        if (m_folders.insert(folder).second)
            ++m_counts.requests["MKCOL"];
        return m_inner.makeFolder(folder);
    }
    sync::Answer<std::vector<std::string>> list(const std::string &folder) override
    {
        ++m_counts.requests["PROPFIND of a folder"];
        auto answer = m_inner.list(folder);
        if (const auto *names = std::get_if<std::vector<std::string>>(&answer))
            m_counts.longestListing = std::max(m_counts.longestListing, names->size());
        return answer;
    }
    sync::Answer<std::optional<std::uint64_t>> sizeOf(const sync::Place &place) override
    {
        ++m_counts.requests["PROPFIND of a file"];
        return m_inner.sizeOf(place);
    }
    sync::Answer<std::optional<std::string>> get(const sync::Place &place) override
    {
        auto answer = m_inner.get(place);
        const auto *file = std::get_if<std::optional<std::string>>(&answer);
        const bool there = file != nullptr && *file;
        ++m_counts.requests[there ? "GET, there" : "GET, not there"];
        m_counts.fileBytesDown += there ? (*file)->size() : 0;
        return answer;
    }
    sync::Answer<bool> put(const sync::Place &place, std::string_view bytes) override
    {
        ++m_counts.requests["PUT"];
        m_counts.fileBytesUp += bytes.size();
        return m_inner.put(place, bytes);
    }
    sync::Answer<Moved> move(const sync::Place &from, const std::string &name) override
    {
        ++m_counts.requests["MOVE"];
        return m_inner.move(from, name);
    }
    sync::Answer<bool> remove(const sync::Place &place) override
    {
        ++m_counts.requests["DELETE"];
        return m_inner.remove(place);
    }

private:
    sync::Storage &m_inner;
    StorageCounts m_counts;
    std::set<std::string> m_folders;
};

} // namespace lidlark::test
