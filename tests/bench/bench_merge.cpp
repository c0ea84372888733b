// What it takes to merge what five devices have written into a store that holds none of it.
//
//   lidlark-bench-merge [EVENTS [EVENTS_IN_FILE [ROUNDS [others]]]]     (100000 500 5)
//
// Turn by turn in one run, each into a fresh file, as durable as a store is: SQLite by itself with
// one table; the store's intake (insert, fold, rows); and the whole way from sealed files on a
// storage in memory (open, verify, place in the chain, intake). CPU and wall clock, the middle of
// the rounds, beside SQLite by itself. Then how many bytes an event takes on a storage.
// With `others`, Yjs and Automerge join the same events, where `npm ci --prefix
// tests/bench/merge_crdt` was run; making their documents takes longer than all the rest.

#include "tests/bench/merge/crdt_libraries.h"
#include "tests/bench/merge/side_by_side.h"

#include <array>
#include <cstdio>
#include <exception>
#include <filesystem>
#include <unistd.h>

namespace {

using namespace lidlark;
namespace fs = std::filesystem;

using bench::Merge;
using bench::middleOf;
using bench::Taken;

void print(const char *what, const std::vector<Taken> &rounds, const std::vector<Taken> &bare)
{
    const double cpu = middleOf(rounds, &Taken::cpu);
    const double wall = middleOf(rounds, &Taken::wall);
    const double size = middleOf(rounds, &Taken::megabytes);
    std::printf("  %-30s %7.2f s %6.2f   %7.2f s %6.2f   %6.1f MB %6.2f\n", what, cpu,
                cpu / middleOf(bare, &Taken::cpu), wall, wall / middleOf(bare, &Taken::wall), size,
                size / middleOf(bare, &Taken::megabytes));
}

/// The libraries that are merged by another program, if they are there.
class Others
{
public:
    Others(const fs::path &folder, bool asked)
        : m_libraries(LIDLARK_SOURCES "/tests/bench/merge_crdt", folder), m_asked(asked),
          m_there(asked && m_libraries.areThere() && m_libraries.prepare())
    {
    }

    void round()
    {
        for (std::size_t i = 0; m_there && i < bench::CrdtLibraries::kinds.size(); ++i) {
            if (const auto merged = m_libraries.merge(bench::CrdtLibraries::kinds.at(i)))
                m_rounds.at(i).push_back({merged->cpu, merged->wall, merged->bytes / 1e6});
        }
    }
    void print(const std::vector<Taken> &bare) const
    {
        if (!m_there)
            std::printf("  Yjs and Automerge: left out, %s\n",
                        m_asked ? "npm has not installed them" : "nobody asked for them");
        for (std::size_t i = 0; i < m_rounds.size(); ++i) {
            const std::string name = std::string(bench::CrdtLibraries::kinds.at(i)) + ", in memory";
            if (!m_rounds.at(i).empty())
                ::print(name.c_str(), m_rounds.at(i), bare);
            else if (m_there)
                std::printf("  %s: failed\n", name.c_str());
        }
    }

private:
    bench::CrdtLibraries m_libraries;
    bool m_asked;
    bool m_there;
    std::array<std::vector<Taken>, bench::CrdtLibraries::kinds.size()> m_rounds;
};

void compare(Merge &merge, Others &others, int rounds)
{
    std::vector<Taken> bare;
    std::vector<Taken> intake;
    std::vector<Taken> whole;
    for (int round = 0; round < rounds; ++round) {
        bare.push_back(merge.bare());
        intake.push_back(merge.intake());
        whole.push_back(merge.wholeWay());
        others.round();
    }
    std::printf("%zu events of five devices, %d rounds in turn, the middle one\n", merge.events(),
                rounds);
    std::printf("  %-30s %9s %6s   %9s %6s   %9s %6s\n", "", "CPU", "ratio", "wall", "ratio",
                "file", "ratio");
    print("SQLite by itself", bare, bare);
    print("intake: insert, fold, rows", intake, bare);
    print("whole way: open, verify, intake", whole, bare);
    others.print(bare);
}

std::size_t argumentOr(int argc, char **argv, int place, std::size_t otherwise)
{
    return argc > place ? static_cast<std::size_t>(std::max(1, std::atoi(argv[place]))) : otherwise;
}

} // namespace

int main(int argc, char **argv)
{
    setenv("LIDLARK_SOURCE_DIR", LIDLARK_SOURCES, 0);
    const fs::path folder =
        fs::temp_directory_path() / ("lidlark-merge-" + std::to_string(getpid()));
    int code = 0;
    try {
        fs::create_directories(folder);
        Merge merge(argumentOr(argc, argv, 1, 100'000), argumentOr(argc, argv, 2, 500), folder);
        merge.prepare();
        merge.writeLines();
        Others others(folder, argc > 4 && std::string(argv[4]) == "others");
        compare(merge, others, static_cast<int>(argumentOr(argc, argv, 3, 5)));
        merge.printBytes();
    } catch (const std::exception &error) {
        std::fprintf(stderr, "%s\n", error.what());
        code = 1;
    }
    fs::remove_all(folder);
    return code;
}
