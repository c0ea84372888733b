#pragma once

#include <atomic>
#include <string>
#include <vector>

#include <sys/types.h>

namespace lidlark::test {

/// Whom a program runs as; 0 for whoever runs the test.
struct RunAs {
    uid_t user = 0;
    gid_t group = 0;
};

/// A program that dies with the test, even with one that crashes. It may be killed from any thread,
/// and lives as long as the thread that started it.
class ChildProcess
{
public:
    ChildProcess() = default;
    ChildProcess(const ChildProcess &) = delete;
    ChildProcess &operator=(const ChildProcess &) = delete;
    ~ChildProcess() { end(); }

    /// @param output a file to which both its outputs are added.
    /// @returns false where it cannot be started.
    bool start(const std::vector<std::string> &command, const std::string &output, RunAs as = {});
    [[nodiscard]] bool isRunning();
    /// Asks it to stop, and waits until it has.
    void stop();
    /// Without a warning, as when the current fails.
    void end();

private:
    void signalAndWait(int signal);

    std::atomic<pid_t> m_id = 0; ///< 0: none.
};

} // namespace lidlark::test
