#include "tests/fuzz/target.h"

#include "core/base/digest.h"
#include "core/crypto/bytes.h"
#include "core/sync/bundle_storage.h"

#include <algorithm>

namespace lidlark::fuzz {

namespace {

void readAsStorage(const sync::Bundle &bundle)
{
    sync::BundleStorage storage(bundle);
    for (const auto &[place, file] : bundle) {
        const auto names = std::get<std::vector<std::string>>(storage.list(place.folder));
        must(std::ranges::find(names, place.name) != names.end(), "a file is listed");
        must(std::get<std::optional<std::string>>(storage.get(place)) == file, "a file is found");
    }
}

void read(std::string_view bytes)
{
    const auto answer = sync::bundleFrom(bytes);
    const auto *bundle = std::get_if<sync::Bundle>(&answer);
    if (bundle == nullptr)
        return;
    must(sync::bundleOf(*bundle) == std::string(bytes), "a bundle is written as it was read");
    readAsStorage(*bundle);
}

} // namespace

void bundle(std::string_view bytes)
{
    read(bytes);
    // Nobody needs a key to put the right hash at its end.
    read(std::string(bytes) + crypto::textOf(blake2b(bytes)));
}

} // namespace lidlark::fuzz
