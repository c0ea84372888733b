#pragma once

#include "tests/support/loopback.h"

#include <cstdint>

namespace lidlark::test {

/// A request as it came over the wire.
struct Asked {
    std::string method;
    std::string target; ///< The path.
    std::string head;   ///< Request line and headers, up to the empty line.
    std::string body;

    /// The value of a header, which is written as @p name; empty where there is none.
    [[nodiscard]] std::string header(const std::string &name) const;
};

/// What is done to one request and its answer.
struct Fault {
    enum class Kind {
        None,       ///< Both pass.
        Drop,       ///< The line breaks before the server hears anything.
        CutRequest, ///< It breaks when the server has `bytes` of head and body.
        LoseAnswer, ///< The server does it; the line breaks before its answer.
        CutAnswer,  ///< The line breaks after `bytes` of the answer.
        Answer,     ///< The server is not asked: `answer` is what comes.
        Trickle,    ///< It comes, a byte every fiftieth of a second.
        Silence     ///< Nothing comes, and the line stays.
    };
    Kind kind = Kind::None;
    std::size_t bytes = 0;
    std::string answer;
    std::function<void()> meanwhile; ///< Done just before the line breaks.

    /// @param headers each with its line end. The body's length is among what is sent.
    static Fault saying(int status, const std::string &headers = {}, const std::string &body = {});
};

/// Stands between a phone and a server that speaks plain HTTP, or in place of one, and does to each
/// request what it was told.
class FaultProxy
{
public:
    /// Asked for each request, from the thread of its connection, one at a time.
    using Choose = std::function<Fault(const Asked &)>;

    /// @param upstream the server's port; 0 where every request gets an answer of the test's.
    FaultProxy(int upstream, Choose choose);

    [[nodiscard]] std::string url() const
    {
        return "http://127.0.0.1:" + std::to_string(m_server.port()) + "/";
    }
    /// All that was asked until now.
    [[nodiscard]] std::vector<Asked> asked();

private:
    void serve(const Socket &phone);
    void pass(const Socket &phone, const Asked &asked, const Fault &fault) const;

    int m_upstream;
    Choose m_choose;
    std::mutex m_mutex;
    std::vector<Asked> m_asked;
    LoopbackServer m_server; ///< Last: its threads use the rest.
};

} // namespace lidlark::test
