#include "core/sync/webdav_storage.h"

#include "core/sync/http_trouble.h"
#include "core/sync/segment.h"
#include "core/sync/webdav_listing.h"

#include <algorithm>

namespace lidlark::sync {

namespace {

constexpr std::string_view question =
    R"(<?xml version="1.0" encoding="utf-8"?><propfind xmlns="DAV:"><prop><getcontentlength/></prop></propfind>)";

bool isOneOf(long status, std::initializer_list<long> hopedFor)
{
    return std::ranges::find(hopedFor, status) != hopedFor.end();
}

bool isKnown(const std::string &folder)
{
    return folder.empty() || isPlainName(folder);
}

bool isKnown(const Place &place)
{
    return isKnown(place.folder) && isPlainName(place.name);
}

/// 405: there is something there (RFC 4918, 9.3.1).
bool isThereNow(const HttpAnswer &made)
{
    return !made.fault && isOneOf(made.status, {200, 201, 405});
}

/// The last part of the path of a folder's URL.
std::string nameOf(std::string url)
{
    url.pop_back();
    return url.substr(url.find_last_of('/') + 1);
}

} // namespace

WebdavStorage::WebdavStorage(const ServerAddress &address, HttpPatience patience,
                             TransferWatch watch)
    : m_root(address.url), m_client(address, patience, std::move(watch)),
      m_download(m_client, largestSegment)
{
}

std::string WebdavStorage::urlOf(const std::string &folder) const
{
    return folder.empty() ? m_root : m_root + folder + "/";
}

std::string WebdavStorage::urlOf(const Place &place) const
{
    return urlOf(place.folder) + place.name;
}

HttpAnswer WebdavStorage::makeOne(const std::string &url)
{
    return m_client.ask({"MKCOL", url, {}, {}});
}

HttpAnswer WebdavStorage::askAbout(const std::string &url, const char *depth)
{
    return m_client.ask(
        {"PROPFIND",
         url,
         {std::string("Depth: ") + depth, "Content-Type: application/xml; charset=utf-8"},
         question,
         largestListing});
}

Answer<bool> WebdavStorage::makeFolder(const std::string &folder)
{
    if (!isKnown(folder))
        return Trouble::Odd;
    if (m_folders.contains(folder))
        return true;
    HttpAnswer made = makeOne(urlOf(folder));
    if (!made.fault && !folder.empty() && isOneOf(made.status, {404, 409})) {
        const HttpAnswer root = makeOne(m_root);
        if (!isThereNow(root))
            return troubleOf(root);
        made = makeOne(urlOf(folder));
    }
    if (!isThereNow(made))
        return troubleOf(made);
    m_folders.insert(folder);
    return true;
}

Answer<std::vector<std::string>> WebdavStorage::list(const std::string &folder)
{
    if (!isKnown(folder))
        return Trouble::Odd;
    const std::string url = urlOf(folder);
    const HttpAnswer answer = askAbout(url, "1");
    std::vector<std::string> names;
    if (!answer.fault && answer.status == 404)
        return names;
    if (answer.fault || answer.status != 207)
        return troubleOf(answer);
    const auto listed = readListing(answer.body);
    if (!listed)
        return Trouble::Odd;
    for (const Listed &line : *listed) {
        if (line.name != nameOf(url)) // the folder is a line of its own listing
            names.push_back(line.name);
    }
    return names;
}

Answer<std::optional<std::uint64_t>> WebdavStorage::sizeOf(const Place &place)
{
    if (!isKnown(place))
        return Trouble::Odd;
    const HttpAnswer answer = askAbout(urlOf(place), "0");
    if (!answer.fault && answer.status == 404)
        return std::optional<std::uint64_t>();
    if (answer.fault || answer.status != 207)
        return troubleOf(answer);
    const auto listed = readListing(answer.body);
    if (!listed || listed->size() != 1 || listed->front().name != place.name ||
        !listed->front().bytes)
        return Trouble::Odd;
    return listed->front().bytes;
}

Answer<std::optional<std::string>> WebdavStorage::get(const Place &place)
{
    if (!isKnown(place))
        return Trouble::Odd;
    return m_download.get(urlOf(place));
}

Answer<bool> WebdavStorage::put(const Place &place, std::string_view bytes)
{
    if (!isKnown(place) || bytes.size() > largestSegment)
        return Trouble::Odd;
    const HttpAnswer answer =
        m_client.ask({"PUT", urlOf(place), {"Content-Type: application/octet-stream"}, bytes});
    if (!answer.fault && isOneOf(answer.status, {200, 201, 204}))
        return true;
    m_folders.clear(); // perhaps somebody took the folder away: asked for again next time
    if (!answer.fault && isOneOf(answer.status, {404, 409}))
        return Trouble::Unreachable;
    return troubleOf(answer);
}

Answer<Storage::Moved> WebdavStorage::move(const Place &from, const std::string &name)
{
    if (!isKnown(from) || !isPlainName(name))
        return Trouble::Odd;
    const HttpAnswer answer = m_client.ask(
        {"MOVE", urlOf(from), {"Destination: " + urlOf({from.folder, name}), "Overwrite: F"}, {}});
    if (!answer.fault && isOneOf(answer.status, {201, 204}))
        return Moved::Done;
    if (!answer.fault && answer.status == 412)
        return Moved::Taken;
    // Nothing to move: perhaps it was moved before, and the answer lost. Begin again. (rclone: 403)
    if (!answer.fault && isOneOf(answer.status, {403, 404}))
        return Trouble::Unreachable;
    return troubleOf(answer);
}

Answer<bool> WebdavStorage::remove(const Place &place)
{
    if (!isKnown(place))
        return Trouble::Odd;
    const HttpAnswer answer = m_client.ask({"DELETE", urlOf(place), {}, {}});
    if (!answer.fault && isOneOf(answer.status, {200, 202, 204, 404, 410}))
        return true;
    return troubleOf(answer);
}

} // namespace lidlark::sync
