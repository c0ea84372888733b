#pragma once

#include "core/sync/storage.h"

#include <filesystem>

namespace lidlark::sync {

/// A folder that another program mirrors, or a stick that is carried over.
class FolderStorage final : public Storage
{
public:
    explicit FolderStorage(std::filesystem::path root) : m_root(std::move(root)) {}

    Answer<bool> makeFolder(const std::string &folder) override;
    Answer<std::vector<std::string>> list(const std::string &folder) override;
    Answer<std::optional<std::uint64_t>> sizeOf(const Place &place) override;
    Answer<std::optional<std::string>> get(const Place &place) override;
    Answer<bool> put(const Place &place, std::string_view bytes) override;
    Answer<Moved> move(const Place &from, const std::string &name) override;
    Answer<bool> remove(const Place &place) override;

private:
    [[nodiscard]] std::filesystem::path pathOf(const Place &place) const;

    std::filesystem::path m_root;
};

} // namespace lidlark::sync
