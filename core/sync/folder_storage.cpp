#include "core/sync/folder_storage.h"

#include <fcntl.h>
#include <unistd.h>

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

std::error_code lastError()
{
    return {errno, std::generic_category()};
}

/// A file or folder of the system, closed when it goes.
class Descriptor
{
public:
    Descriptor(const fs::path &path, int flags)
        : m_number(::open(path.c_str(), flags | O_CLOEXEC, 0600))
    {
    }
    ~Descriptor()
    {
        if (m_number >= 0)
            ::close(m_number);
    }
    Descriptor(const Descriptor &) = delete;
    Descriptor &operator=(const Descriptor &) = delete;

    [[nodiscard]] bool isOpen() const { return m_number >= 0; }
    [[nodiscard]] bool write(std::string_view bytes) const
    {
        while (!bytes.empty()) {
            const ssize_t written = ::write(m_number, bytes.data(), bytes.size());
            if (written < 0 && errno != EINTR)
                return false;
            bytes.remove_prefix(written > 0 ? static_cast<std::size_t>(written) : 0);
        }
        return true;
    }
    [[nodiscard]] bool reachDisk() const { return ::fsync(m_number) == 0; }

private:
    int m_number;
};

/// A new name is on the disk once its folder is. Some file systems cannot say so: then it is as
/// safe as they make it.
void keepNamesOf(const fs::path &folder)
{
    const Descriptor names(folder, O_RDONLY | O_DIRECTORY);
    if (names.isOpen())
        (void)names.reachDisk();
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
