#include "core/sync/resumed_get.h"

#include "core/sync/http_trouble.h"

#include <charconv>

namespace lidlark::sync {

namespace {

std::optional<std::size_t> numberIn(const std::string &text)
{
    std::size_t number = 0;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), number);
    if (text.empty() || read.ec != std::errc() || read.ptr != text.data() + text.size())
        return std::nullopt;
    return number;
}

/// Whether a body that seems to be over is known to be whole, and the file itself. One without a
/// length ends wherever the line breaks; one in another coding or for a browser is not the file.
bool isTheFile(const HttpAnswer &answer)
{
    const std::string coding = answer.header("content-encoding");
    return (!answer.header("content-length").empty() ||
            !answer.header("transfer-encoding").empty()) &&
           (coding.empty() || coding == "identity") &&
           !answer.header("content-type").starts_with("text/html");
}

} // namespace

bool ResumedGet::goesOn(const HttpAnswer &answer) const
{
    // "bytes 500-999/1000" (RFC 9110, 14.4)
    const std::string begin = "bytes " + std::to_string(m_bytes.size()) + "-";
    const std::string end = "/" + std::to_string(m_wholeBytes);
    const std::string range = answer.header("content-range");
    return answer.status == 206 && range.starts_with(begin) && range.ends_with(end);
}

HttpAnswer ResumedGet::ask(const std::string &url)
{
    HttpCall call{"GET", url, {"Accept-Encoding: identity"}, {}, m_largestBytes};
    if (m_url != url)
        forget();
    if (!m_bytes.empty()) {
        call.headers.push_back("Range: bytes=" + std::to_string(m_bytes.size()) + "-");
        call.largestBody = m_wholeBytes;
    }
    return m_client.ask(std::move(call));
}

void ResumedGet::keep(const std::string &url, HttpAnswer &answer)
{
    if (answer.fault == HttpFault::TooLarge)
        return forget();
    if (!m_bytes.empty() && goesOn(answer)) {
        m_bytes += answer.body;
        if (m_bytes.size() > m_wholeBytes)
            forget(); // whatever comes there, it is not the rest of the file
    } else if (const auto length = numberIn(answer.header("content-length"));
               answer.status == 200 && length && *length <= m_largestBytes && isTheFile(answer)) {
        m_url = url;
        m_bytes = std::move(answer.body);
        m_wholeBytes = *length;
    }
}

Answer<std::optional<std::string>> ResumedGet::get(const std::string &url)
{
    HttpAnswer answer = ask(url);
    const bool wasResumed = !m_bytes.empty();
    if (answer.fault) {
        keep(url, answer);
        return troubleOf(*answer.fault);
    }
    if (wasResumed && goesOn(answer) && m_bytes.size() + answer.body.size() == m_wholeBytes) {
        std::string whole = std::move(m_bytes) + answer.body;
        forget();
        return std::optional(std::move(whole));
    }
    if (wasResumed && (answer.status == 206 || answer.status == 416)) {
        forget(); // it is not the file that was begun: all of it again
        answer = ask(url);
        if (answer.fault)
            return troubleOf(*answer.fault);
    }
    const bool isGone = answer.status == 404 || answer.status == 410;
    if (answer.status != 200 && !isGone)
        return troubleOfStatus(answer.status); // what was begun is good for another time
    forget();
    if (isGone)
        return std::optional<std::string>();
    if (!isTheFile(answer))
        return Trouble::Odd;
    return std::optional(std::move(answer.body));
}

} // namespace lidlark::sync
