#include "core/sync/folder_storage.h"

#include "core/base/descriptor.h"

#include <fcntl.h>

#include <cerrno>
#include <fstream>
#include <sstream>
#include <system_error>

namespace lidlark::sync {

namespace {

namespace fs = std::filesystem;

Trouble troubleOf(const std::error_code &error)
{
    if (error == std::errc::no_space_on_device || error.value() == EDQUOT)
        return Trouble::Full;
    if (error == std::errc::permission_denied || error == std::errc::operation_not_permitted ||
        error == std::errc::read_only_file_system)
        return Trouble::Refused;
    if (error == std::errc::device_or_resource_busy || error == std::errc::text_file_busy)
        return Trouble::Locked;
    if (error == std::errc::no_such_file_or_directory || error == std::errc::not_a_directory ||
        error == std::errc::io_error)
        return Trouble::Unreachable; // the stick was pulled, or the mirror is not there
    return Trouble::Odd;
}

} // namespace

fs::path FolderStorage::pathOf(const Place &place) const
{
    return m_root / place.folder / place.name;
}

Answer<bool> FolderStorage::makeFolder(const std::string &folder)
{
    std::error_code error;
    if (!fs::is_directory(m_root, error))
        return Trouble::Unreachable; // never made anew: a stick that is out is not an empty one
    fs::create_directory(m_root / folder, error);
    if (error)
        return troubleOf(error);
    keepNamesOf(m_root);
    return true;
}

Answer<std::vector<std::string>> FolderStorage::list(const std::string &folder)
{
    std::error_code error;
    if (!fs::is_directory(m_root, error))
        return Trouble::Unreachable;
    std::vector<std::string> names;
    fs::directory_iterator entry(m_root / folder, error);
    if (error == std::errc::no_such_file_or_directory)
        return names;
    for (; !error && entry != fs::directory_iterator(); entry.increment(error))
        names.push_back(entry->path().filename().string());
    if (error)
        return troubleOf(error);
    return names;
}

Answer<std::optional<std::uint64_t>> FolderStorage::sizeOf(const Place &place)
{
    std::error_code error;
    if (!fs::is_directory(m_root, error))
        return Trouble::Unreachable;
    const std::uint64_t size = fs::file_size(pathOf(place), error);
    if (error == std::errc::no_such_file_or_directory)
        return std::optional<std::uint64_t>();
    if (error)
        return troubleOf(error);
    return std::optional(size);
}

Answer<std::optional<std::string>> FolderStorage::get(const Place &place)
{
    const auto size = sizeOf(place);
    if (const auto trouble = troubleIn(size))
        return *trouble;
    if (!std::get<std::optional<std::uint64_t>>(size))
        return std::optional<std::string>();
    std::ifstream file(pathOf(place), std::ios::binary);
    std::ostringstream bytes;
    bytes << file.rdbuf();
    if (!file)
        return Trouble::Unreachable;
    return std::optional(bytes.str());
}

Answer<bool> FolderStorage::put(const Place &place, std::string_view bytes)
{
    const Descriptor file(pathOf(place), O_WRONLY | O_CREAT | O_TRUNC);
    if (!file.isOpen() || !file.write(bytes) || !file.reachDisk())
        return troubleOf(lastError());
    return true;
}

Answer<Storage::Moved> FolderStorage::move(const Place &from, const std::string &name)
{
    const fs::path to = pathOf({from.folder, name});
    // A second name for the same file is made or refused as one, where a renaming would go over it.
    std::error_code error;
    fs::create_hard_link(pathOf(from), to, error);
    if (error == std::errc::file_exists)
        return Moved::Taken;
    if (error) { // a stick knows no second names
        if (fs::exists(to, error))
            return Moved::Taken;
        fs::rename(pathOf(from), to, error);
        if (error)
            return troubleOf(error);
    } else {
        fs::remove(pathOf(from), error);
    }
    keepNamesOf(to.parent_path());
    return Moved::Done;
}

Answer<bool> FolderStorage::remove(const Place &place)
{
    std::error_code error;
    fs::remove(pathOf(place), error);
    if (error)
        return troubleOf(error);
    return true;
}

} // namespace lidlark::sync
