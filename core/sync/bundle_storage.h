#pragma once

#include "core/sync/bundle.h"

namespace lidlark::sync {

/// A file that was handed over, read as any other storage. Nothing can be written to it: what this
/// phone has to say goes into a bundle of its own.
class BundleStorage final : public Storage
{
public:
    explicit BundleStorage(Bundle bundle) : m_bundle(std::move(bundle)) {}

    Answer<bool> makeFolder(const std::string &folder) override;
    Answer<std::vector<std::string>> list(const std::string &folder) override;
    Answer<std::optional<std::uint64_t>> sizeOf(const Place &place) override;
    Answer<std::optional<std::string>> get(const Place &place) override;
    Answer<bool> put(const Place &place, std::string_view bytes) override;
    Answer<Moved> move(const Place &from, const std::string &name) override;
    Answer<bool> remove(const Place &place) override;

private:
    Bundle m_bundle;
};

} // namespace lidlark::sync
