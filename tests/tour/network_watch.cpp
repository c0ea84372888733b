#include "tests/tour/network_watch.h"

#include <csignal>
#include <cstddef>

#include <linux/filter.h>
#include <linux/seccomp.h>
#include <sys/prctl.h>
#include <sys/socket.h>
#include <sys/syscall.h>

namespace lidlark::test {

namespace {

volatile std::sig_atomic_t tries = 0;

void countOne(int)
{
    tries = tries + 1;
}

} // namespace

bool watchTheNetwork()
{
    struct sigaction action = {};
    action.sa_handler = countOne;
    if (sigaction(SIGSYS, &action, nullptr) != 0)
        return false;
    constexpr unsigned number = offsetof(seccomp_data, nr);
    constexpr unsigned family = offsetof(seccomp_data, args);
    sock_filter rules[] = {
        BPF_STMT(BPF_LD | BPF_W | BPF_ABS, number),
        BPF_JUMP(BPF_JMP | BPF_JEQ | BPF_K, SYS_socket, 0, 4),
        BPF_STMT(BPF_LD | BPF_W | BPF_ABS, family),
        BPF_JUMP(BPF_JMP | BPF_JEQ | BPF_K, AF_INET, 1, 0),
        BPF_JUMP(BPF_JMP | BPF_JEQ | BPF_K, AF_INET6, 0, 1),
        BPF_STMT(BPF_RET | BPF_K, SECCOMP_RET_TRAP),
        BPF_STMT(BPF_RET | BPF_K, SECCOMP_RET_ALLOW),
    };
    sock_fprog program{sizeof rules / sizeof rules[0], rules};
    return prctl(PR_SET_NO_NEW_PRIVS, 1, 0, 0, 0) == 0 &&
           prctl(PR_SET_SECCOMP, SECCOMP_MODE_FILTER, &program) == 0;
}

int networkTries()
{
    return tries;
}

} // namespace lidlark::test
