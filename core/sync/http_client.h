#pragma once

#include "core/sync/http_call.h"
#include "core/sync/server_address.h"

#include <atomic>
#include <chrono>
#include <functional>
#include <memory>

namespace lidlark::sync {

/// Bytes a second. With less the largest segment would take three hours: nobody waits so long.
inline constexpr long slowestLine = 100;

/// How long a server may keep a phone waiting.
struct HttpPatience {
    std::chrono::milliseconds connecting{15'000};
    std::chrono::seconds stalled{30}; ///< With less than slowestLine either way.
};

/// Who looks on while bytes move.
struct TransferWatch {
    /// Bytes that moved either way since it was last told. Called within a call; throws nothing.
    std::function<void(std::uint64_t bytes)> moved;
    /// Ends what is under way within a second, and lets nothing begin, while it is true. Outlives
    /// the client.
    const std::atomic<bool> *stop = nullptr;
};

/// Speaks to one server, over a line that stays open between calls. One thread at a time.
class HttpClient
{
public:
    explicit HttpClient(ServerAddress address, HttpPatience patience = {},
                        TransferWatch watch = {});
    HttpClient(const HttpClient &) = delete;
    HttpClient &operator=(const HttpClient &) = delete;
    ~HttpClient();

    /// Goes to @p call's URL with the credentials of the address, and on to where it is sent as
    /// long as that is the same file on the same server.
    HttpAnswer ask(HttpCall call);

private:
    struct Line;

    HttpAnswer askOnce(const HttpCall &call);
    void prepare(const HttpCall &call);

    ServerAddress m_address;
    HttpPatience m_patience;
    TransferWatch m_watch;
    std::unique_ptr<Line> m_line;
};

} // namespace lidlark::sync
