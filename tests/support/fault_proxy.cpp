#include "tests/support/fault_proxy.h"

#include <algorithm>
#include <chrono>
#include <cstdlib>

namespace lidlark::test {

namespace {

constexpr std::string_view headEnd = "\r\n\r\n";

/// The next request; its head is empty where the phone has gone.
Asked read(const Socket &phone)
{
    Asked asked;
    std::string text;
    while (text.find(headEnd) == std::string::npos) {
        const std::string piece = phone.read();
        if (piece.empty())
            return {};
        text += piece;
    }
    const std::size_t end = text.find(headEnd);
    asked.head = text.substr(0, end + 2);
    asked.body = text.substr(end + headEnd.size());
    const auto length = std::strtoull(asked.header("Content-Length").c_str(), nullptr, 10);
    while (asked.body.size() < length) {
        const std::string piece = phone.read();
        if (piece.empty())
            return {};
        asked.body += piece;
    }
    asked.method = text.substr(0, text.find(' '));
    const std::size_t target = asked.method.size() + 1;
    asked.target = text.substr(target, text.find(' ', target) - target);
    return asked;
}

std::string allOf(const Socket &socket)
{
    std::string all;
    for (std::string piece = socket.read(); !piece.empty(); piece = socket.read())
        all += piece;
    return all;
}

} // namespace

std::string Asked::header(const std::string &name) const
{
    const std::string beginning = "\r\n" + name + ": ";
    const std::size_t at = head.find(beginning);
    if (at == std::string::npos)
        return {};
    const std::size_t value = at + beginning.size();
    return head.substr(value, head.find("\r\n", value) - value);
}

Fault Fault::saying(int status, const std::string &headers, const std::string &body)
{
    Fault fault;
    fault.kind = Kind::Answer;
    fault.answer = "HTTP/1.1 " + std::to_string(status) + " Said\r\nConnection: close\r\n" +
                   headers + "Content-Length: " + std::to_string(body.size()) + "\r\n\r\n" + body;
    return fault;
}

FaultProxy::FaultProxy(int upstream, Choose choose)
    : m_upstream(upstream), m_choose(std::move(choose)),
      m_server([this](const Socket &phone) { serve(phone); })
{
}

std::vector<Asked> FaultProxy::asked()
{
    const std::lock_guard lock(m_mutex);
    return m_asked;
}

/// One request a connection, so that each has its own to break.
void FaultProxy::serve(const Socket &phone)
{
    const Asked asked = read(phone);
    if (asked.head.empty())
        return;
    Fault fault;
    {
        const std::lock_guard lock(m_mutex);
        m_asked.push_back(asked);
        fault = m_choose(asked);
    }
    switch (fault.kind) {
    case Fault::Kind::Drop:
        break;
    case Fault::Kind::Trickle:
        for (const char byte : fault.answer) {
            std::this_thread::sleep_for(std::chrono::milliseconds(20));
            if (!phone.write(std::string_view(&byte, 1)))
                break;
        }
        break;
    case Fault::Kind::Silence:
        (void)phone.read(); // until the phone gives up
        break;
    case Fault::Kind::Answer:
        phone.write(std::string_view(fault.answer)
                        .substr(0, fault.bytes > 0 ? fault.bytes : std::string::npos));
        break;
    default:
        pass(phone, asked, fault);
    }
}

void FaultProxy::pass(const Socket &phone, const Asked &asked, const Fault &fault) const
{
    const Socket server = Socket::to(m_upstream);
    if (!server.isOpen())
        return;
    const std::string all = asked.head + "Connection: close" + std::string(headEnd) + asked.body;
    const bool isCut = fault.kind == Fault::Kind::CutRequest;
    server.write(std::string_view(all).substr(0, isCut ? fault.bytes : std::string::npos));
    if (isCut) {
        if (fault.meanwhile)
            fault.meanwhile();
        return;
    }
    const std::string answer = allOf(server);
    if (fault.meanwhile)
        fault.meanwhile();
    if (fault.kind == Fault::Kind::CutAnswer)
        phone.write(std::string_view(answer).substr(0, fault.bytes));
    else if (fault.kind == Fault::Kind::None)
        phone.write(answer);
}

} // namespace lidlark::test
