#include "core/base/descriptor.h"

#include <fcntl.h>
#include <unistd.h>

#include <cerrno>

namespace lidlark {

std::error_code lastError()
{
    return {errno, std::generic_category()};
}

Descriptor::Descriptor(const std::filesystem::path &path, int flags)
    : m_number(::open(path.c_str(), flags | O_CLOEXEC, 0600))
{
}

Descriptor::~Descriptor()
{
    if (m_number >= 0)
        ::close(m_number);
}

bool Descriptor::write(std::string_view bytes) const
{
    while (!bytes.empty()) {
        const ssize_t written = ::write(m_number, bytes.data(), bytes.size());
        if (written < 0 && errno != EINTR)
            return false;
        bytes.remove_prefix(written > 0 ? static_cast<std::size_t>(written) : 0);
    }
    return true;
}

bool Descriptor::reachDisk() const
{
    return ::fsync(m_number) == 0;
}

void keepNamesOf(const std::filesystem::path &folder)
{
    const Descriptor names(folder, O_RDONLY | O_DIRECTORY);
    if (names.isOpen())
        (void)names.reachDisk();
}

} // namespace lidlark
