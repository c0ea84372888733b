#pragma once

#include "tests/support/loopback.h"

#include <cstdint>

namespace lidlark::test {

/// Bytes, each way. A connection ends when one of the numbers has passed.
struct WireBytes {
    std::uint64_t toServer = UINT64_MAX;
    std::uint64_t toPhone = UINT64_MAX;
};

/// Passes bytes between a phone and a server without knowing what they say, encrypted or not;
/// counts them, and cuts each connection where it was told.
class CutRelay
{
public:
    explicit CutRelay(int upstream, WireBytes most = {});

    [[nodiscard]] int port() const { return m_server.port(); }
    [[nodiscard]] WireBytes passed() const { return {m_toServer, m_toPhone}; }
    [[nodiscard]] int connections() const { return m_connections; }

private:
    void serve(const Socket &phone);

    int m_upstream;
    WireBytes m_most;
    std::atomic<std::uint64_t> m_toServer = 0;
    std::atomic<std::uint64_t> m_toPhone = 0;
    std::atomic<int> m_connections = 0;
    LoopbackServer m_server; ///< Last: its threads use the rest.
};

} // namespace lidlark::test
