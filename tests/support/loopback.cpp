#include "tests/support/loopback.h"

#include <arpa/inet.h>
#include <netinet/in.h>
#include <netinet/tcp.h>
#include <sys/socket.h>
#include <sys/time.h>
#include <unistd.h>

#include <array>
#include <cstdio>
#include <cstdlib>

namespace lidlark::test {

namespace {

sockaddr_in addressOf(int port)
{
    sockaddr_in address{};
    address.sin_family = AF_INET;
    address.sin_port = htons(static_cast<std::uint16_t>(port));
    address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
    return address;
}

int newSocket()
{
    const int number = ::socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC, 0);
    if (number < 0) {
        std::perror("socket");
        std::abort();
    }
    return number;
}

/// @returns the port it got.
int bound(int number)
{
    sockaddr_in address = addressOf(0);
    socklen_t size = sizeof address;
    if (::bind(number, reinterpret_cast<sockaddr *>(&address), size) != 0 ||
        ::getsockname(number, reinterpret_cast<sockaddr *>(&address), &size) != 0) {
        std::perror("bind");
        std::abort();
    }
    return ntohs(address.sin_port);
}

} // namespace

Socket::~Socket()
{
    if (m_number >= 0)
        ::close(m_number);
}

Socket Socket::to(int port)
{
    Socket socket(newSocket());
    const sockaddr_in address = addressOf(port);
    if (::connect(socket.m_number, reinterpret_cast<const sockaddr *>(&address), sizeof address) !=
        0)
        return Socket();
    const timeval wait{30, 0};
    ::setsockopt(socket.m_number, SOL_SOCKET, SO_RCVTIMEO, &wait, sizeof wait);
    const int now = 1;
    ::setsockopt(socket.m_number, IPPROTO_TCP, TCP_NODELAY, &now, sizeof now);
    return socket;
}

std::string Socket::read() const
{
    std::array<char, 65536> bytes{};
    const ssize_t count = ::recv(m_number, bytes.data(), bytes.size(), 0);
    return count > 0 ? std::string(bytes.data(), static_cast<std::size_t>(count)) : std::string();
}

bool Socket::write(std::string_view bytes) const
{
    while (!bytes.empty()) {
        const ssize_t count = ::send(m_number, bytes.data(), bytes.size(), MSG_NOSIGNAL);
        if (count <= 0)
            return false;
        bytes.remove_prefix(static_cast<std::size_t>(count));
    }
    return true;
}

int freePort()
{
    const Socket socket(newSocket());
    return bound(socket.number());
}

LoopbackServer::LoopbackServer(Serve serve) : m_serve(std::move(serve)), m_listening(newSocket())
{
    m_port = bound(m_listening);
    ::listen(m_listening, 16);
    m_accepting = std::thread([this] { accept(); });
}

LoopbackServer::~LoopbackServer()
{
    {
        const std::lock_guard lock(m_mutex);
        m_ends = true;
        for (const int number : m_open)
            ::shutdown(number, SHUT_RDWR);
    }
    ::shutdown(m_listening, SHUT_RDWR); // wakes who waits in accept
    m_accepting.join();
    for (std::thread &thread : m_threads)
        thread.join();
    ::close(m_listening);
}

void LoopbackServer::accept()
{
    while (true) {
        const int number = ::accept4(m_listening, nullptr, nullptr, SOCK_CLOEXEC);
        const std::lock_guard lock(m_mutex);
        if (number < 0 || m_ends) {
            const Socket unwanted(number);
            return;
        }
        m_open.insert(number);
        m_threads.emplace_back([this, number] {
            const Socket socket(number);
            m_serve(socket);
            const std::lock_guard done(m_mutex);
            m_open.erase(number);
        });
    }
}

} // namespace lidlark::test
