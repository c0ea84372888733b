#pragma once

#include "core/sync/http_client.h"
#include "core/sync/storage.h"

#include <cstddef>

namespace lidlark::sync {

/// Fetches files that never change. What came of the last one before its line broke is kept: asked
/// for the same again, it goes on from there (RFC 9110, 14.2).
class ResumedGet
{
public:
    /// @param largestBytes a file may have at most; one with more is Trouble::Odd.
    ResumedGet(HttpClient &client, std::size_t largestBytes)
        : m_client(client), m_largestBytes(largestBytes)
    {
    }

    /// @returns the whole file; nothing inside where there is none.
    Answer<std::optional<std::string>> get(const std::string &url);

private:
    HttpAnswer ask(const std::string &url);
    void keep(const std::string &url, HttpAnswer &answer);
    void forget() { m_url.clear(), m_bytes.clear(); }
    [[nodiscard]] bool goesOn(const HttpAnswer &answer) const;

    HttpClient &m_client;
    std::size_t m_largestBytes;
    std::string m_url;   ///< Whose beginning is kept; empty for none.
    std::string m_bytes; ///< Its beginning.
    std::size_t m_wholeBytes = 0;
};

} // namespace lidlark::sync
