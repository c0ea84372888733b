#pragma once

#include "core/sync/patience.h"

namespace lidlark::sync {

/// Another storage, asked with patience. A move is not made again after no answer came: it may have
/// been done, and whoever publishes finds that out by beginning again.
class PatientStorage final : public Storage
{
public:
    /// Both outlive this.
    PatientStorage(Storage &storage, Patience &patience) : m_storage(storage), m_patience(patience)
    {
    }

    Answer<bool> makeFolder(const std::string &folder) override;
    Answer<std::vector<std::string>> list(const std::string &folder) override;
    Answer<std::optional<std::uint64_t>> sizeOf(const Place &place) override;
    Answer<std::optional<std::string>> get(const Place &place) override;
    Answer<bool> put(const Place &place, std::string_view bytes) override;
    Answer<Moved> move(const Place &from, const std::string &name) override;
    Answer<bool> remove(const Place &place) override;

private:
    Storage &m_storage;
    Patience &m_patience;
};

} // namespace lidlark::sync
