#pragma once

#include <filesystem>
#include <string_view>
#include <system_error>

namespace lidlark {

/// What the system said last.
std::error_code lastError();

/// A file or folder of the system, closed when it goes. What is made can be read by its owner's
/// account alone.
class Descriptor
{
public:
    /// @param flags of open(2).
    Descriptor(const std::filesystem::path &path, int flags);
    ~Descriptor();
    Descriptor(const Descriptor &) = delete;
    Descriptor &operator=(const Descriptor &) = delete;

    [[nodiscard]] bool isOpen() const { return m_number >= 0; }
    /// All of it, or false.
    [[nodiscard]] bool write(std::string_view bytes) const;
    /// Waits until it is on the disk.
    [[nodiscard]] bool reachDisk() const;

private:
    int m_number;
};

/// A new name is on the disk once its folder is. Some file systems cannot say so: then it is as
/// safe as they make it.
void keepNamesOf(const std::filesystem::path &folder);

} // namespace lidlark
