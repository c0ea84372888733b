#include "tests/support/cut_relay.h"

#include <poll.h>

#include <array>

namespace lidlark::test {

namespace {

/// Passes on what came. @returns false where the connection is at its end.
bool passOn(const Socket &from, const Socket &to, std::uint64_t &left,
            std::atomic<std::uint64_t> &passed)
{
    const std::string bytes = from.read();
    const std::string_view piece = std::string_view(bytes).substr(0, left);
    passed += piece.size(); // before the other side can have it, and ask how many
    left -= piece.size();
    return !piece.empty() && to.write(piece) && left > 0;
}

} // namespace

CutRelay::CutRelay(int upstream, WireBytes most)
    : m_upstream(upstream), m_most(most), m_server([this](const Socket &phone) { serve(phone); })
{
}

void CutRelay::serve(const Socket &phone)
{
    ++m_connections;
    const Socket server = Socket::to(m_upstream);
    if (!server.isOpen())
        return;
    WireBytes left = m_most;
    std::array<pollfd, 2> ends{{{phone.number(), POLLIN, 0}, {server.number(), POLLIN, 0}}};
    while (::poll(ends.data(), ends.size(), -1) > 0) {
        if (ends[0].revents != 0 && !passOn(phone, server, left.toServer, m_toServer))
            return;
        if (ends[1].revents != 0 && !passOn(server, phone, left.toPhone, m_toPhone))
            return;
    }
}

} // namespace lidlark::test
