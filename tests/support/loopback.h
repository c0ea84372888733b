#pragma once

#include <atomic>
#include <functional>
#include <mutex>
#include <set>
#include <string>
#include <string_view>
#include <thread>
#include <utility>
#include <vector>

namespace lidlark::test {

/// A TCP connection on this machine, closed when it goes.
class Socket
{
public:
    explicit Socket(int number = -1) : m_number(number) {}
    Socket(Socket &&other) noexcept : m_number(std::exchange(other.m_number, -1)) {}
    Socket &operator=(Socket &&) = delete;
    ~Socket();

    /// To whoever listens on 127.0.0.1; not open where nobody does. It gives up reading after half
    /// a minute, so that no test waits for ever.
    static Socket to(int port);

    [[nodiscard]] bool isOpen() const { return m_number >= 0; }
    [[nodiscard]] int number() const { return m_number; }
    /// Some bytes; none where the other side has closed or the line broke.
    [[nodiscard]] std::string read() const;
    bool write(std::string_view bytes) const;

private:
    int m_number;
};

/// A port of 127.0.0.1 that nobody listens on now.
int freePort();

/// Listens on a free port of 127.0.0.1; each connection has a thread of its own.
class LoopbackServer
{
public:
    using Serve = std::function<void(const Socket &)>;

    explicit LoopbackServer(Serve serve);
    LoopbackServer(const LoopbackServer &) = delete;
    LoopbackServer &operator=(const LoopbackServer &) = delete;
    /// Breaks every connection, and waits for the threads.
    ~LoopbackServer();

    [[nodiscard]] int port() const { return m_port; }

private:
    void accept();

    Serve m_serve;
    int m_listening = -1;
    int m_port = 0;
    std::mutex m_mutex;
    bool m_ends = false;
    std::set<int> m_open;
    std::vector<std::thread> m_threads;
    std::thread m_accepting;
};

} // namespace lidlark::test
