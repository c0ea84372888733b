#include "core/sync/webdav_listing.h"

#include <pugixml.hpp>

#include <algorithm>
#include <charconv>

namespace lidlark::sync {

namespace {

constexpr std::string_view dav = "DAV:";
/// No honest element carries more; a dishonest one would have them read for each of its children.
constexpr int mostDeclarations = 32;
constexpr std::size_t longestName = 100;

/// The value of the declaration @p name on @p node itself.
std::optional<std::string_view> declared(const pugi::xml_node &node, std::string_view name)
{
    int seen = 0;
    for (const pugi::xml_attribute &attribute : node.attributes()) {
        if (name == attribute.name())
            return attribute.value();
        if (++seen == mostDeclarations)
            break;
    }
    return std::nullopt;
}

/// Source: Namespaces in XML 1.0, 5 and 6.
std::string_view namespaceOf(const pugi::xml_node &node)
{
    const std::string_view name = node.name();
    const std::size_t colon = name.find(':');
    const std::string declaration =
        colon == std::string_view::npos ? "xmlns" : "xmlns:" + std::string(name.substr(0, colon));
    for (pugi::xml_node at = node; at; at = at.parent()) {
        if (const auto found = declared(at, declaration))
            return *found;
    }
    return {};
}

bool isDav(const pugi::xml_node &node, std::string_view name)
{
    std::string_view local = node.name();
    local.remove_prefix(local.find(':') + 1); // npos + 1 is 0
    return local == name && namespaceOf(node) == dav;
}

pugi::xml_node davChild(const pugi::xml_node &node, std::string_view name)
{
    return node.find_child([name](const pugi::xml_node &child) { return isDav(child, name); });
}

std::string_view textOf(const pugi::xml_node &node)
{
    constexpr std::string_view space = " \t\r\n";
    const std::string_view text = node.child_value();
    const std::size_t begin = text.find_first_not_of(space);
    if (begin == std::string_view::npos)
        return {};
    return text.substr(begin, text.find_last_not_of(space) - begin + 1);
}

/// Of `HTTP/1.1 200 OK`.
bool saysOk(const pugi::xml_node &status)
{
    const std::string_view text = textOf(status);
    const std::size_t space = text.find(' ');
    if (!text.starts_with("HTTP/") || space == std::string_view::npos)
        return false;
    const std::string_view code = text.substr(space + 1);
    return code.substr(0, code.find(' ')) == "200";
}

std::string percentDecoded(std::string_view text)
{
    std::string decoded;
    for (std::size_t at = 0; at < text.size(); ++at) {
        unsigned char byte = 0;
        const char *digits = text.data() + at + 1;
        if (text[at] == '%' && at + 2 < text.size() &&
            std::from_chars(digits, digits + 2, byte, 16).ptr == digits + 2) {
            decoded += static_cast<char>(byte);
            at += 2;
        } else {
            decoded += text[at];
        }
    }
    return decoded;
}

/// The last part of a path, absolute or not, encoded or not; a folder's slash does not count.
std::string nameIn(std::string_view href)
{
    if (const std::size_t host = href.find("://"); host != std::string_view::npos)
        href.remove_prefix(std::min(href.find('/', host + 3), href.size()));
    if (href.ends_with('/'))
        href.remove_suffix(1);
    return percentDecoded(href.substr(href.find_last_of('/') + 1));
}

/// Only what the server vouches for: a property it does not have comes back empty, with 404.
std::optional<std::uint64_t> lengthIn(const pugi::xml_node &response)
{
    for (const pugi::xml_node &propstat : response.children()) {
        if (!isDav(propstat, "propstat") || !saysOk(davChild(propstat, "status")))
            continue;
        const std::string_view text =
            textOf(davChild(davChild(propstat, "prop"), "getcontentlength"));
        std::uint64_t bytes = 0;
        const auto read = std::from_chars(text.data(), text.data() + text.size(), bytes);
        if (!text.empty() && read.ec == std::errc() && read.ptr == text.data() + text.size())
            return bytes;
    }
    return std::nullopt;
}

} // namespace

bool isPlainName(std::string_view name)
{
    return !name.empty() && name.size() <= longestName && name.front() != '.' &&
           std::ranges::all_of(name, [](char letter) {
               return (letter >= '0' && letter <= '9') || (letter >= 'a' && letter <= 'z') ||
                      letter == '.';
           });
}

std::optional<std::vector<Listed>> readListing(std::string_view xml)
{
    pugi::xml_document document; // it knows no entities but XML's own five, and leaves DTDs alone
    if (!document.load_buffer(xml.data(), xml.size()))
        return std::nullopt;
    const pugi::xml_node multistatus = document.document_element();
    if (!isDav(multistatus, "multistatus"))
        return std::nullopt;
    std::vector<Listed> listed;
    for (const pugi::xml_node &response : multistatus.children()) {
        // A response with a status of its own is about something that is not there (14.24).
        if (!isDav(response, "response") || davChild(response, "status"))
            continue;
        std::string name = nameIn(textOf(davChild(response, "href")));
        if (isPlainName(name))
            listed.push_back({std::move(name), lengthIn(response)});
    }
    return listed;
}

} // namespace lidlark::sync
