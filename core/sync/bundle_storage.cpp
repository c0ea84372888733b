#include "core/sync/bundle_storage.h"

namespace lidlark::sync {

Answer<bool> BundleStorage::makeFolder(const std::string & /*folder*/)
{
    return Trouble::Refused;
}

Answer<std::vector<std::string>> BundleStorage::list(const std::string &folder)
{
    std::vector<std::string> names;
    for (auto file = m_bundle.lower_bound({folder, {}});
         file != m_bundle.end() && file->first.folder == folder; ++file)
        names.push_back(file->first.name);
    return names;
}

Answer<std::optional<std::uint64_t>> BundleStorage::sizeOf(const Place &place)
{
    const auto file = m_bundle.find(place);
    return file != m_bundle.end() ? std::optional<std::uint64_t>(file->second.size())
                                  : std::nullopt;
}

Answer<std::optional<std::string>> BundleStorage::get(const Place &place)
{
    const auto file = m_bundle.find(place);
    return file != m_bundle.end() ? std::optional(file->second) : std::nullopt;
}

Answer<bool> BundleStorage::put(const Place & /*place*/, std::string_view /*bytes*/)
{
    return Trouble::Refused;
}

Answer<Storage::Moved> BundleStorage::move(const Place & /*from*/, const std::string & /*name*/)
{
    return Trouble::Refused;
}

Answer<bool> BundleStorage::remove(const Place & /*place*/)
{
    return Trouble::Refused;
}

} // namespace lidlark::sync
