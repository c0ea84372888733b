#include "tests/support/child_process.h"

#include <fcntl.h>
#include <grp.h>
#include <signal.h>
#include <sys/prctl.h>
#include <sys/wait.h>
#include <unistd.h>

namespace lidlark::test {

namespace {

/// In the child: other threads' locks may be held, so nothing here takes memory.
[[noreturn]] void become(char *const *words, const char *output, RunAs as)
{
    const int log = ::open(output, O_WRONLY | O_CREAT | O_APPEND, 0666);
    ::dup2(log, STDOUT_FILENO);
    ::dup2(log, STDERR_FILENO);
    const bool isAnother = as.user != 0;
    if (isAnother &&
        (::setgroups(0, nullptr) != 0 || ::setgid(as.group) != 0 || ::setuid(as.user) != 0))
        ::_exit(126);
    ::prctl(PR_SET_PDEATHSIG, SIGKILL); // after setuid, which forgets it
    ::execvp(words[0], words);
    ::_exit(127);
}

} // namespace

bool ChildProcess::start(const std::vector<std::string> &command, const std::string &output,
                         RunAs as)
{
    end();
    std::vector<std::string> copies = command;
    std::vector<char *> words;
    words.reserve(copies.size() + 1);
    for (std::string &word : copies)
        words.push_back(word.data());
    words.push_back(nullptr);
    const pid_t id = ::fork();
    if (id == 0)
        become(words.data(), output.c_str(), as);
    m_id = id > 0 ? id : 0;
    return id > 0;
}

bool ChildProcess::isRunning()
{
    if (m_id != 0 && ::waitpid(m_id, nullptr, WNOHANG) == m_id)
        m_id = 0;
    return m_id != 0;
}

void ChildProcess::stop()
{
    signalAndWait(SIGTERM);
}

void ChildProcess::end()
{
    signalAndWait(SIGKILL);
}

void ChildProcess::signalAndWait(int signal)
{
    const pid_t id = m_id.exchange(0);
    if (id == 0)
        return;
    ::kill(id, signal);
    ::waitpid(id, nullptr, 0);
}

} // namespace lidlark::test
