#include "core/sync/incoming_answer.h"

#include <algorithm>
#include <cctype>

namespace lidlark::sync {

namespace {

/// Many times what any server sends.
constexpr std::size_t largestHeaders = 64'000;

std::string_view trimmed(std::string_view text)
{
    constexpr std::string_view space = " \t\r\n";
    const std::size_t begin = text.find_first_not_of(space);
    if (begin == std::string_view::npos)
        return {};
    return text.substr(begin, text.find_last_not_of(space) - begin + 1);
}

} // namespace

bool IncomingAnswer::takeHeader(std::string_view line)
{
    m_headerBytes += line.size();
    if (m_headerBytes > largestHeaders) {
        m_isTooLarge = true;
        return false;
    }
    if (line.starts_with("HTTP/"))
        m_answer.headers.clear(); // what came before was not the answer itself (RFC 9110, 15.2)
    m_isHeadWhole = trimmed(line).empty();
    const std::size_t colon = line.find(':');
    if (colon == std::string_view::npos)
        return true;
    std::string name(line.substr(0, colon));
    std::ranges::transform(name, name.begin(), [](unsigned char letter) {
        return static_cast<char>(std::tolower(letter));
    });
    m_answer.headers[name] = trimmed(line.substr(colon + 1));
    return true;
}

bool IncomingAnswer::takeBody(std::string_view piece)
{
    if (piece.size() > m_largestBody - m_answer.body.size()) {
        m_isTooLarge = true;
        return false;
    }
    m_answer.body += piece;
    return true;
}

} // namespace lidlark::sync
