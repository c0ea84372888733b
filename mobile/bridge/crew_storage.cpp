#include "mobile/bridge/crew_storage.h"

#include "core/sync/connection_words.h"
#include "core/sync/folder_storage.h"
#include "core/sync/sync_words.h"
#include "core/sync/webdav_storage.h"

#include <filesystem>

namespace lidlark::mobile {

namespace {

std::variant<sync::ServerAddress, sync::AddressFault> serverIn(const sync::CrewPlace &place)
{
    return sync::checkedAddress({place.address, place.user, place.password, {}, {}});
}

} // namespace

bool isOnServer(const std::string &address)
{
    return !address.empty() && !std::filesystem::path(address).is_absolute();
}

sync::CrewPlace tidied(const sync::CrewPlace &typed)
{
    if (!isOnServer(typed.address))
        return {typed.address, {}, {}};
    const auto server = serverIn(typed);
    const auto *address = std::get_if<sync::ServerAddress>(&server);
    return address == nullptr ? typed
                              : sync::CrewPlace{address->url, address->user, address->password};
}

StorageOrWhy storageFor(const sync::CrewPlace &place)
{
    if (isOnServer(place.address)) {
        const auto server = serverIn(place);
        if (const auto *fault = std::get_if<sync::AddressFault>(&server))
            return sync::sentenceFor(*fault);
        return std::make_unique<sync::WebdavStorage>(std::get<sync::ServerAddress>(server));
    }
    std::error_code ignored;
    if (!std::filesystem::is_directory(place.address, ignored))
        return sync::noFolderSentence();
    return std::make_unique<sync::FolderStorage>(place.address);
}

std::pair<bool, wording::Sentence> triedOut(sync::Storage &storage, Entropy &entropy)
{
    const sync::Connection connection = sync::checkConnection(storage, entropy);
    return {connection == sync::Connection::Works, sync::sentenceFor(connection)};
}

} // namespace lidlark::mobile
