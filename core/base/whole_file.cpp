#include "core/base/whole_file.h"

#include "core/base/descriptor.h"

#include <fcntl.h>

namespace lidlark {

std::error_code writeWholeFile(const std::filesystem::path &path, std::string_view bytes)
{
    std::filesystem::path beside = path;
    beside += ".new";
    {
        const Descriptor file(beside, O_WRONLY | O_CREAT | O_TRUNC);
        if (!file.isOpen() || !file.write(bytes) || !file.reachDisk())
            return lastError();
    }
    std::error_code error;
    std::filesystem::rename(beside, path, error);
    if (!error)
        keepNamesOf(path.parent_path().empty() ? "." : path.parent_path());
    return error;
}

} // namespace lidlark
