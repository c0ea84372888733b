#include "core/sync/http_client.h"

#include "core/sync/incoming_answer.h"
#include "core/sync/redirect.h"
#include "core/sync/web_url.h"

#include <curl/curl.h>

#include <algorithm>
#include <array>

namespace lidlark::sync {

namespace {

std::size_t takeHeader(char *bytes, std::size_t one, std::size_t count, void *into)
{
    // Another number than came ends the transfer.
    const std::string_view line(bytes, one * count);
    return static_cast<IncomingAnswer *>(into)->takeHeader(line) ? line.size() : 0;
}

std::size_t takeBody(char *bytes, std::size_t one, std::size_t count, void *into)
{
    const std::string_view piece(bytes, one * count);
    return static_cast<IncomingAnswer *>(into)->takeBody(piece) ? piece.size() : 0;
}

/// Who looks on at the call under way, and how much of it was told.
struct Looking {
    const TransferWatch *watch = nullptr;
    std::uint64_t told = 0;
};

bool isStopped(const TransferWatch &watch)
{
    return watch.stop != nullptr && *watch.stop;
}

int tellMoved(void *from, curl_off_t /*toCome*/, curl_off_t received, curl_off_t /*toGo*/,
              curl_off_t sent)
{
    auto &looking = *static_cast<Looking *>(from);
    const auto moved = static_cast<std::uint64_t>(received + sent);
    if (moved > looking.told && looking.watch->moved)
        looking.watch->moved(moved - looking.told);
    looking.told = std::max(moved, looking.told);
    return isStopped(*looking.watch) ? 1 : 0;
}

/// A line that breaks while keys are agreed upon, and a server that speaks no TLS, have one code;
/// of the second OpenSSL says what it found wrong.
HttpFault faultOfHandshake(std::string_view failure)
{
    const bool isAboutWords = failure.find("SSL routines") != std::string_view::npos &&
                              failure.find("unexpected eof") == std::string_view::npos;
    return isAboutWords ? HttpFault::NotHttp : HttpFault::NoAnswer;
}

HttpFault faultOf(CURLcode code, bool tooLarge, std::string_view failure)
{
    switch (code) {
    case CURLE_ABORTED_BY_CALLBACK:
        return HttpFault::Stopped;
    case CURLE_PEER_FAILED_VERIFICATION:
    case CURLE_SSL_ISSUER_ERROR:
    case CURLE_SSL_INVALIDCERTSTATUS:
    case CURLE_SSL_CACERT_BADFILE: // nobody can be trusted without the file that says whom
        return HttpFault::NotTrusted;
    case CURLE_SSL_CONNECT_ERROR:
        return faultOfHandshake(failure);
    case CURLE_WRITE_ERROR:
        return tooLarge ? HttpFault::TooLarge : HttpFault::CutShort;
    case CURLE_UNSUPPORTED_PROTOCOL:
    case CURLE_WEIRD_SERVER_REPLY:
    case CURLE_BAD_CONTENT_ENCODING:
        return HttpFault::NotHttp;
    case CURLE_PARTIAL_FILE:
    case CURLE_RECV_ERROR:
    case CURLE_SEND_ERROR:
        return HttpFault::CutShort;
    default:
        return HttpFault::NoAnswer;
    }
}

} // namespace

/// The handle of libcurl, with the headers of the call under way.
struct HttpClient::Line {
    CURL *curl = curl_easy_init();
    curl_slist *headers = nullptr;
    std::array<char, CURL_ERROR_SIZE> failure{}; ///< Ends with a zero.

    Line() = default;
    Line(const Line &) = delete;
    Line &operator=(const Line &) = delete;
    ~Line()
    {
        curl_slist_free_all(headers);
        curl_easy_cleanup(curl);
    }

    template <class Value> void set(CURLoption option, Value value) const
    {
        curl_easy_setopt(curl, option, value);
    }
    void setHeaders(const HttpCall &call)
    {
        curl_slist_free_all(headers);
        headers = nullptr;
        const auto isType = [](const std::string &header) {
            return header.starts_with("Content-Type:");
        };
        // libcurl would call it a form; a header of which only the name is given is left out.
        if (std::ranges::none_of(call.headers, isType))
            headers = curl_slist_append(headers, "Content-Type:");
        for (const std::string &header : call.headers)
            headers = curl_slist_append(headers, header.c_str());
        set(CURLOPT_HTTPHEADER, headers);
    }
    template <class Value> [[nodiscard]] Value info(CURLINFO which) const
    {
        Value value{};
        curl_easy_getinfo(curl, which, &value);
        return value;
    }
};

HttpClient::HttpClient(ServerAddress address, HttpPatience patience, TransferWatch watch)
    : m_address(std::move(address)), m_patience(patience), m_watch(std::move(watch)),
      m_line(std::make_unique<Line>())
{
}

HttpClient::~HttpClient() = default;

void HttpClient::prepare(const HttpCall &call)
{
    const Line &line = *m_line;
    curl_easy_reset(line.curl);
    line.set(CURLOPT_NOSIGNAL, 1L); // other threads are none of its business
    line.set(CURLOPT_PROTOCOLS_STR, "http,https");
    line.set(CURLOPT_HTTP_VERSION, static_cast<long>(CURL_HTTP_VERSION_1_1));
    line.set(CURLOPT_SSLVERSION, static_cast<long>(CURL_SSLVERSION_TLSv1_2));
    if (!m_address.caFile.empty())
        line.set(CURLOPT_CAINFO, m_address.caFile.c_str());
    const auto url = readUrl(call.url);
    if (url && isThisMachine(url->host))
        line.set(CURLOPT_PROXY, ""); // no proxy stands between a machine and itself

    line.set(CURLOPT_CONNECTTIMEOUT_MS, static_cast<long>(m_patience.connecting.count()));
    line.set(CURLOPT_LOW_SPEED_LIMIT, slowestLine);
    line.set(CURLOPT_LOW_SPEED_TIME, static_cast<long>(m_patience.stalled.count()));

    // Sent at once: asking first without them costs a second call, and a body sent in vain.
    if (!m_address.bearer.empty()) {
        line.set(CURLOPT_HTTPAUTH, CURLAUTH_BEARER);
        line.set(CURLOPT_XOAUTH2_BEARER, m_address.bearer.c_str());
    } else if (!m_address.user.empty() || !m_address.password.empty()) {
        line.set(CURLOPT_HTTPAUTH, CURLAUTH_BASIC);
        line.set(CURLOPT_USERNAME, m_address.user.c_str());
        line.set(CURLOPT_PASSWORD, m_address.password.c_str());
    }
    line.set(CURLOPT_URL, call.url.c_str());
    if (call.method != "GET") { // with a length always, even if it is 0
        line.set(CURLOPT_POSTFIELDS, call.body.data() != nullptr ? call.body.data() : "");
        line.set(CURLOPT_POSTFIELDSIZE_LARGE, static_cast<curl_off_t>(call.body.size()));
        line.set(CURLOPT_CUSTOMREQUEST, call.method.c_str());
    }
    m_line->setHeaders(call);
}

HttpAnswer HttpClient::askOnce(const HttpCall &call)
{
    IncomingAnswer incoming(call.largestBody);
    Looking looking{&m_watch};
    prepare(call);
    const Line &line = *m_line;
    line.set(CURLOPT_HEADERFUNCTION, takeHeader);
    line.set(CURLOPT_HEADERDATA, &incoming);
    line.set(CURLOPT_WRITEFUNCTION, takeBody);
    line.set(CURLOPT_WRITEDATA, &incoming);
    line.set(CURLOPT_NOPROGRESS, 0L);
    line.set(CURLOPT_XFERINFOFUNCTION, tellMoved);
    line.set(CURLOPT_XFERINFODATA, &looking);
    line.set(CURLOPT_ERRORBUFFER, m_line->failure.data());

    const CURLcode code = curl_easy_perform(line.curl);
    HttpAnswer &answer = incoming.answer();
    answer.status = line.info<long>(CURLINFO_RESPONSE_CODE);
    if (code != CURLE_OK)
        answer.fault = faultOf(code, incoming.isTooLarge(), m_line->failure.data());
    else if (!incoming.isHeadWhole())
        answer.fault = HttpFault::CutShort; // libcurl takes what there was for all
    return std::move(answer);
}

HttpAnswer HttpClient::ask(HttpCall call)
{
    HttpAnswer answer;
    for (int times = 0; times <= mostRedirects; ++times) {
        if (isStopped(m_watch)) {
            answer.fault = HttpFault::Stopped;
            return answer;
        }
        answer = askOnce(call);
        if (answer.fault || !sendsOn(answer.status))
            return answer;
        const auto next = followed(call.url, answer.header("location"));
        if (!next)
            break;
        call.url = *next;
    }
    answer.fault = HttpFault::Elsewhere;
    return answer;
}

} // namespace lidlark::sync
