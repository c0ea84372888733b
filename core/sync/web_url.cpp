#include "core/sync/web_url.h"

#include <arpa/inet.h>
#include <curl/curl.h>

#include <algorithm>
#include <cctype>
#include <memory>
#include <string_view>
#include <utility>

namespace lidlark::sync {

namespace {

struct Cleanup {
    void operator()(CURLU *url) const { curl_url_cleanup(url); }
};
using UrlHandle = std::unique_ptr<CURLU, Cleanup>;

std::string partOf(const UrlHandle &url, CURLUPart part, unsigned flags = 0)
{
    char *text = nullptr;
    if (curl_url_get(url.get(), part, &text, flags) != CURLUE_OK)
        return {};
    std::string copy(text);
    curl_free(text);
    return copy;
}

std::string_view ownPortOf(std::string_view scheme)
{
    return scheme == "https" ? "443" : "80";
}

/// Other schemes are taken as well, so that a wrong one can be told from no address at all.
bool isSet(const UrlHandle &url, const std::string &text, unsigned flags)
{
    return text.find('\0') == std::string::npos &&
           curl_url_set(url.get(), CURLUPART_URL, text.c_str(),
                        flags | CURLU_NON_SUPPORT_SCHEME | CURLU_URLENCODE) == CURLUE_OK;
}

std::optional<WebUrl> partsOf(const UrlHandle &url)
{
    WebUrl read;
    read.scheme = partOf(url, CURLUPART_SCHEME);
    read.host = partOf(url, CURLUPART_HOST);
    std::ranges::transform(read.host, read.host.begin(), [](unsigned char letter) {
        return static_cast<char>(letter < 0x80 ? std::tolower(letter) : letter);
    });
    read.port = partOf(url, CURLUPART_PORT, CURLU_DEFAULT_PORT);
    read.path = partOf(url, CURLUPART_PATH);
    read.user = partOf(url, CURLUPART_USER, CURLU_URLDECODE);
    read.password = partOf(url, CURLUPART_PASSWORD, CURLU_URLDECODE);
    char *part = nullptr;
    for (const CURLUPart more : {CURLUPART_QUERY, CURLUPART_FRAGMENT}) {
        read.hasMore = curl_url_get(url.get(), more, &part, 0) == CURLUE_OK || read.hasMore;
        curl_free(std::exchange(part, nullptr));
    }
    if (read.host.empty())
        return std::nullopt;
    return read;
}

} // namespace

bool WebUrl::isSameServerAs(const WebUrl &other) const
{
    return scheme == other.scheme && host == other.host && port == other.port;
}

std::string WebUrl::text() const
{
    const std::string shownPort = port == ownPortOf(scheme) ? "" : ":" + port;
    return scheme + "://" + host + shownPort + path;
}

std::optional<WebUrl> readUrl(const std::string &text)
{
    const UrlHandle url(curl_url());
    if (!url || !isSet(url, text, CURLU_DEFAULT_SCHEME))
        return std::nullopt;
    return partsOf(url);
}

std::optional<WebUrl> readReference(const std::string &base, const std::string &reference)
{
    const UrlHandle url(curl_url());
    if (!url || !isSet(url, base, 0) || !isSet(url, reference, 0))
        return std::nullopt;
    return partsOf(url);
}

bool isThisMachine(const std::string &host)
{
    in_addr address{};
    if (inet_pton(AF_INET, host.c_str(), &address) == 1)
        return ntohl(address.s_addr) >> 24 == 127; // 127.0.0.0/8: RFC 1122, 3.2.1.3
    return host == "localhost" || host == "[::1]";
}

} // namespace lidlark::sync
