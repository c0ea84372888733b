#include "mobile/bridge/crew_storage.h"

#include "core/sync/folder_storage.h"
#include "core/sync/sync_words.h"

#include <filesystem>

namespace lidlark::mobile {

bool isOnServer(const std::string &address)
{
    return !address.empty() && !std::filesystem::path(address).is_absolute();
}

Result<std::unique_ptr<sync::Storage>> storageFor(const sync::CrewPlace &place)
{
    if (isOnServer(place.address))
        return Error{ErrorCode::Invalid, "the shared place: no folder of this phone"};
    std::error_code ignored;
    if (!std::filesystem::is_directory(place.address, ignored))
        return Error{ErrorCode::NotFound, "the folder " + place.address};
    return std::unique_ptr<sync::Storage>(std::make_unique<sync::FolderStorage>(place.address));
}

std::optional<wording::Sentence> whatBars(sync::Storage &storage, Entropy &entropy)
{
    const std::string name = entropy.freshId();
    const sync::Place part{"try", name + ".part"};
    const auto told = [](auto answer) -> std::optional<wording::Sentence> {
        const auto trouble = sync::troubleIn(answer);
        return trouble ? std::optional(sync::sentenceFor(*trouble)) : std::nullopt;
    };
    if (auto bar = told(storage.makeFolder(part.folder)))
        return bar;
    if (auto bar = told(storage.put(part, "lidlark")))
        return bar;
    if (auto bar = told(storage.move(part, name)))
        return bar;
    return told(storage.remove({part.folder, name}));
}

} // namespace lidlark::mobile
