#pragma once

#include "core/sync/http_client.h"
#include "core/sync/resumed_get.h"
#include "core/sync/storage.h"

#include <set>

namespace lidlark::sync {

/// A folder on a WebDAV server (RFC 4918), spoken to in the words that every server understands
/// alike (platform.md, WebDAV). What a name holds is neither overwritten nor locked, and no entity
/// tag is relied upon. One thread at a time.
///
/// Besides what Storage says: a name that is not plain (isPlainName) is Odd, and so is a file of
/// more than the largest segment.
class WebdavStorage final : public Storage
{
public:
    /// @param address checked (checkedAddress). Where its folder is missing, it is made once
    /// something is to be kept in it; the one above must be there.
    explicit WebdavStorage(const ServerAddress &address, HttpPatience patience = {},
                           TransferWatch watch = {});

    Answer<bool> makeFolder(const std::string &folder) override;
    Answer<std::vector<std::string>> list(const std::string &folder) override;
    Answer<std::optional<std::uint64_t>> sizeOf(const Place &place) override;
    Answer<std::optional<std::string>> get(const Place &place) override;
    Answer<bool> put(const Place &place, std::string_view bytes) override;
    Answer<Moved> move(const Place &from, const std::string &name) override;
    Answer<bool> remove(const Place &place) override;

private:
    [[nodiscard]] std::string urlOf(const std::string &folder) const;
    [[nodiscard]] std::string urlOf(const Place &place) const;
    HttpAnswer makeOne(const std::string &url);
    HttpAnswer askAbout(const std::string &url, const char *depth);

    std::string m_root; ///< Ends with a slash.
    HttpClient m_client;
    ResumedGet m_download;
    std::set<std::string> m_folders; ///< Known to be there: not asked about each time.
};

} // namespace lidlark::sync
