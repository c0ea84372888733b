#include "tests/fuzz/target.h"

#include "core/sync/incoming_answer.h"
#include "core/sync/redirect.h"
#include "core/sync/server_address.h"
#include "core/sync/web_url.h"

#include <algorithm>

namespace lidlark::fuzz {

namespace {

using sync::ServerAddress;

constexpr std::size_t largestBody = 200;

void takeHead(std::string_view bytes)
{
    sync::IncomingAnswer incoming(largestBody);
    std::string_view rest = bytes;
    while (!rest.empty() && !incoming.isHeadWhole()) {
        const std::size_t end = std::min(rest.find('\n'), rest.size() - 1) + 1;
        if (!incoming.takeHeader(rest.substr(0, end)))
            break;
        rest.remove_prefix(end);
    }
    while (!rest.empty() && incoming.takeBody(rest.substr(0, rest.size() / 2 + 1)))
        rest.remove_prefix(rest.size() / 2 + 1);
    must(incoming.answer().body.size() <= largestBody, "a body is held within its bounds");
    for (const auto &[name, value] : incoming.answer().headers)
        must(name.find('\n') == std::string::npos && value.find('\n') == std::string::npos,
             "a header is one line");
}

void typeAddress(const std::string &text)
{
    const auto answer = sync::checkedAddress({text, {}, {}, {}, {}});
    const auto *address = std::get_if<ServerAddress>(&answer);
    if (address == nullptr)
        return;
    must(address->url.ends_with('/'), "an address is a folder's");
    must(address->url.starts_with("https://") || address->url.starts_with("http://"),
         "an address is http or https");
    const auto again = sync::checkedAddress(*address);
    const auto *same = std::get_if<ServerAddress>(&again);
    must(same != nullptr && *same == *address, "an address that was checked stays as it is");
}

void follow(const std::string &location)
{
    const std::string from = "https://dav.example:8443/crew/ab12/00ff";
    const auto next = sync::followed(from, location);
    if (!next)
        return;
    const auto here = sync::readUrl(from);
    const auto there = sync::readUrl(*next);
    must(there && there->isSameServerAs(*here), "nobody is sent to another server");
    must(there->path.find("00ff") != std::string::npos, "nobody is sent to another file");
}

} // namespace

void http(std::string_view bytes)
{
    const std::string text(bytes);
    takeHead(bytes);
    typeAddress(text);
    follow(text);
}

} // namespace lidlark::fuzz
