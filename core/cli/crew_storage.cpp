#include "core/cli/crew_storage.h"

#include "core/cli/file_contents.h"
#include "core/sync/folder_storage.h"
#include "core/sync/webdav_storage.h"

namespace lidlark::cli {

namespace {

std::string firstLineOf(const std::string &text)
{
    return text.substr(0, text.find_first_of("\r\n"));
}

const char *sentenceFor(sync::AddressFault fault)
{
    switch (fault) {
    case sync::AddressFault::Unreadable:
        return "--to: not an address";
    case sync::AddressFault::OtherScheme:
        return "--to: an address begins with https://";
    case sync::AddressFault::NotSafe:
        return "--to: http would show the password to everybody on the way; use https";
    case sync::AddressFault::HasQuery:
        return "--to: the address of a page, not of a folder";
    case sync::AddressFault::TwoCredentials:
        return "--to: two names or passwords";
    case sync::AddressFault::NotSendable:
        break;
    }
    return "--user: a character that cannot be sent";
}

Result<std::unique_ptr<sync::Storage>> serverAt(const PlaceOptions &place)
{
    sync::ServerAddress typed;
    typed.url = place.to;
    typed.user = place.user;
    typed.caFile = place.caFile;
    if (!place.passwordFile.empty()) {
        const auto text = contentsOf(place.passwordFile);
        if (!text)
            return Error{ErrorCode::NotFound, place.passwordFile};
        (place.token ? typed.bearer : typed.password) = firstLineOf(*text);
    }
    const auto checked = sync::checkedAddress(typed);
    if (const auto *fault = std::get_if<sync::AddressFault>(&checked))
        return Error{ErrorCode::Invalid, sentenceFor(*fault)};
    return std::unique_ptr<sync::Storage>(
        std::make_unique<sync::WebdavStorage>(std::get<sync::ServerAddress>(checked)));
}

} // namespace

Result<std::unique_ptr<sync::Storage>> storageAt(const PlaceOptions &place)
{
    if (place.to.empty())
        return Error{ErrorCode::Invalid, "--to: where? A folder, or the URL of one"};
    if (place.to.find("://") != std::string::npos)
        return serverAt(place);
    std::error_code ignored;
    if (!std::filesystem::is_directory(place.to, ignored))
        return Error{ErrorCode::NotFound, "the folder " + place.to};
    return std::unique_ptr<sync::Storage>(std::make_unique<sync::FolderStorage>(place.to));
}

std::filesystem::path secretsBeside(const std::string &store)
{
    return store + ".keys";
}

} // namespace lidlark::cli
