#include "core/usecase/whole_folder.h"

#include <fcntl.h>
#include <unistd.h>

#include <cerrno>
#include <cstdlib>
#include <string_view>
#include <system_error>

namespace lidlark::usecase {

namespace {

namespace fs = std::filesystem;

/// Written and on the disk, so that a full one is noticed before anything is put in place.
bool writeFile(const fs::path &path, std::string_view bytes)
{
    const int file = ::open(path.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0600);
    if (file < 0)
        return false;
    bool written = true;
    while (written && !bytes.empty()) {
        const ssize_t size = ::write(file, bytes.data(), bytes.size());
        written = size > 0 || (size < 0 && errno == EINTR);
        bytes.remove_prefix(size > 0 ? static_cast<std::size_t>(size) : 0);
    }
    written = written && ::fsync(file) == 0;
    return ::close(file) == 0 && written;
}

/// A folder of a fresh name, for this account alone; gone again unless it was put in place.
class Making
{
public:
    explicit Making(const fs::path &folder) : m_path(folder.string() + ".making-XXXXXX")
    {
        if (::mkdtemp(m_path.data()) == nullptr)
            m_path.clear();
    }
    ~Making()
    {
        std::error_code ignored; // it was worth no more than the try
        if (!m_path.empty())
            fs::remove_all(m_path, ignored);
    }
    Making(const Making &) = delete;
    Making &operator=(const Making &) = delete;

    [[nodiscard]] bool isThere() const { return !m_path.empty(); }
    [[nodiscard]] fs::path path() const { return m_path; }
    /// Takes the place of an empty folder, and of nothing else: the system sees to that.
    bool putInPlace(const fs::path &folder)
    {
        std::error_code failed;
        fs::rename(m_path, folder, failed);
        if (!failed)
            m_path.clear();
        return !failed;
    }

private:
    std::string m_path;
};

bool isTaken(const fs::path &folder)
{
    std::error_code failed;
    const fs::file_status status = fs::symlink_status(folder, failed);
    if (!fs::exists(status))
        return false;
    return !fs::is_directory(status) || !fs::is_empty(folder, failed) || failed;
}

} // namespace

Outcome writeWholeFolder(const fs::path &folder, std::span<const NamedFile> files)
{
    std::error_code failed;
    fs::path whole = fs::absolute(folder, failed).lexically_normal();
    if (!whole.has_filename()) // "there/"
        whole = whole.parent_path();
    if (folder.empty() || failed || !fs::is_directory(whole.parent_path(), failed))
        return Error{ErrorCode::NotFound, whole.parent_path().string()};
    if (isTaken(whole))
        return Error{ErrorCode::Invalid, whole.string() + ": something is there already"};
    Making making(whole);
    if (!making.isThere())
        return Error{ErrorCode::Unwritable, whole.string()};
    for (const NamedFile &file : files) {
        if (!writeFile(making.path() / file.name, file.bytes))
            return Error{ErrorCode::Unwritable, whole.string()};
    }
    if (!making.putInPlace(whole))
        return Error{ErrorCode::Unwritable, whole.string()};
    return Done{};
}

} // namespace lidlark::usecase
