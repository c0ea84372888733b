// How long a cold start takes, beside an empty Qt Quick Controls window on the same machine, in the
// same run, turn by turn. Ratios; a time alone says nothing.
//
//   lidlark-bench-start STORE [RUNS]
//
// Wall clock and CPU time from the start of the process to the end of its first frame, and peak
// memory, of the best run and of the middle one (POSIX wait4, getrusage).

#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <vector>

namespace {

struct Run {
    double wallMs = 0;
    double cpuMs = 0;
    double memoryMiB = 0;
};

double msOf(const timeval &time)
{
    return static_cast<double>(time.tv_sec) * 1e3 + static_cast<double>(time.tv_usec) / 1e3;
}

Run start(const char *program, const char *argument)
{
    const auto begin = std::chrono::steady_clock::now();
    const pid_t child = fork();
    if (child == 0) {
        execl(program, program, argument, nullptr);
        _exit(127);
    }
    int status = 0;
    rusage used{};
    wait4(child, &status, 0, &used);
    const auto end = std::chrono::steady_clock::now();
    if (!WIFEXITED(status) || WEXITSTATUS(status) != 0) {
        std::fprintf(stderr, "%s did not show a frame\n", program);
        std::exit(1);
    }
    return {std::chrono::duration<double, std::milli>(end - begin).count(),
            msOf(used.ru_utime) + msOf(used.ru_stime),
            static_cast<double>(used.ru_maxrss) / 1024.0};
}

double at(std::vector<double> values, std::size_t place)
{
    std::sort(values.begin(), values.end());
    return values[place];
}

void print(const char *what, const std::vector<Run> &ours, const std::vector<Run> &empty,
           double Run::*value)
{
    std::vector<double> mine;
    std::vector<double> floor;
    mine.reserve(ours.size());
    floor.reserve(empty.size());
    for (std::size_t i = 0; i < ours.size(); ++i) {
        mine.push_back(ours[i].*value);
        floor.push_back(empty[i].*value);
    }
    const std::size_t middle = mine.size() / 2;
    std::printf("%-14s best %7.1f / %7.1f = %.2f   middle %7.1f / %7.1f = %.2f\n", what,
                at(mine, 0), at(floor, 0), at(mine, 0) / at(floor, 0), at(mine, middle),
                at(floor, middle), at(mine, middle) / at(floor, middle));
}

} // namespace

int main(int argc, char **argv)
{
    if (argc < 2) {
        std::fprintf(stderr, "lidlark-bench-start STORE [RUNS]\n");
        return 2;
    }
    const int runs = argc > 2 ? std::max(1, std::atoi(argv[2])) : 15;
    std::vector<Run> ours;
    std::vector<Run> empty;
    start(LIDLARK_FIRST_FRAME, argv[1]); // both warm in the page cache
    start(LIDLARK_EMPTY_WINDOW, "");
    for (int i = 0; i < runs; ++i) {
        ours.push_back(start(LIDLARK_FIRST_FRAME, argv[1]));
        empty.push_back(start(LIDLARK_EMPTY_WINDOW, ""));
    }
    print("wall ms", ours, empty, &Run::wallMs);
    print("CPU ms", ours, empty, &Run::cpuMs);
    print("peak MiB", ours, empty, &Run::memoryMiB);
    return 0;
}
