#include "tests/fuzz/target.h"

#include "core/sync/webdav_listing.h"

namespace lidlark::fuzz {

void listing(std::string_view bytes)
{
    const auto files = sync::readListing(bytes);
    if (!files)
        return;
    must(files->size() <= bytes.size(), "no more files than bytes");
    for (const sync::Listed &file : *files)
        must(sync::isPlainName(file.name), "a name that is asked for is plain");
}

} // namespace lidlark::fuzz
