// lidlark-tidy CLANG_TIDY ROOT BUILD FOLDER... [--long FOLDER...]: clang-tidy over every source
// file below the folders of the project, several files at a time in two threads. A file found clean
// is not read again until it, a header of ours that it includes, its flags or the settings change.
// Folders after
// --long are read with LIDLARK_LONG=1 only. Exit 1 where something was found.

#include "tests/arrows/source_file.h"
#include "tests/lint/freshness.h"
#include "tests/lint/tidy.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <deque>
#include <mutex>
#include <optional>
#include <thread>

namespace lidlark::lint {

namespace {

constexpr std::size_t filesAtOnce = 32;
constexpr int workers = 2;

/// What is still to be read, and what was found; shared by the workers.
class Round
{
public:
    Round(const Tidy &tidy, const Freshness &freshness, const std::vector<Batch> &batches)
        : m_tidy(tidy), m_freshness(freshness), m_ahead(batches.begin(), batches.end())
    {
    }

    void work()
    {
        while (const std::optional<Batch> batch = next())
            take(*batch, m_tidy.read(*batch));
    }

    [[nodiscard]] const std::set<std::string> &findings() const { return m_findings; }

private:
    std::optional<Batch> next()
    {
        const std::lock_guard guard(m_lock);
        if (m_ahead.empty())
            return std::nullopt;
        Batch batch = std::move(m_ahead.front());
        m_ahead.pop_front();
        return batch;
    }

    void take(const Batch &batch, const Tidy::Verdict &verdict)
    {
        const std::lock_guard guard(m_lock);
        if (!verdict.isReadable && batch.size() > 1) {
            auto [first, second] = halvesOf(batch);
            m_ahead.push_back(std::move(first));
            m_ahead.push_back(std::move(second));
            return;
        }
        m_findings.insert(verdict.findings.begin(), verdict.findings.end());
        if (!verdict.isClean)
            return;
        for (const CompileCommand &command : batch)
            m_freshness.markClean(command);
    }

    const Tidy &m_tidy;
    const Freshness &m_freshness;
    std::mutex m_lock;
    std::deque<Batch> m_ahead;
    std::set<std::string> m_findings; ///< A set: a header's finding comes back with each batch.
};

std::vector<CompileCommand> commandsOf(const std::filesystem::path &root,
                                       const std::filesystem::path &build,
                                       const std::vector<std::string> &folders)
{
    const std::string json = arrows::contentsOf(build / "compile_commands.json");
    std::vector<CompileCommand> all;
    for (const std::string &folder : folders) {
        const auto commands = commandsBelow(root / folder, json);
        all.insert(all.end(), commands.begin(), commands.end());
    }
    return all;
}

/// The folders asked for, those after "--long" in the slow mode alone.
std::vector<std::string> foldersOf(std::vector<std::string> words)
{
    const auto longer = std::ranges::find(words, "--long");
    if (longer == words.end())
        return words;
    if (std::getenv("LIDLARK_LONG"))
        words.erase(longer);
    else
        words.erase(longer, words.end());
    return words;
}

int run(const std::filesystem::path &program, const std::filesystem::path &root,
        const std::filesystem::path &build, const std::vector<std::string> &folders)
{
    const std::vector<CompileCommand> all = commandsOf(root, build, folders);
    if (all.empty()) {
        std::puts("compile_commands.json names no file of the project: nothing was checked");
        return 1;
    }
    const std::filesystem::path cache = build / "tidy-cache";
    const Tidy tidy(program, root, cache / "scratch", std::getenv("LIDLARK_LONG") != nullptr);
    const Freshness freshness(root, cache, tidy.settings());
    std::vector<CompileCommand> changed;
    for (const CompileCommand &command : all) {
        if (!freshness.isKnownClean(command))
            changed.push_back(command);
    }
    std::printf("%zu files, %zu to read\n", all.size(), changed.size());

    Round round(tidy, freshness, batchesOf(changed, filesAtOnce));
    std::vector<std::thread> threads;
    threads.reserve(workers);
    for (int worker = 0; worker < workers; ++worker)
        threads.emplace_back([&round] { round.work(); });
    for (std::thread &thread : threads)
        thread.join();
    for (const std::string &finding : round.findings())
        std::fputs(finding.c_str(), stdout);
    std::printf("%zu findings\n", round.findings().size());
    return round.findings().empty() ? 0 : 1;
}

} // namespace

} // namespace lidlark::lint

int main(int count, char **words)
{
    const std::vector<std::string> arguments(words + 1, words + count);
    if (arguments.size() < 4) {
        std::fputs("use: lidlark-tidy CLANG_TIDY ROOT BUILD FOLDER... [--long FOLDER...]\n",
                   stderr);
        return 2;
    }
    return lidlark::lint::run(arguments[0], arguments[1], arguments[2],
                              lidlark::lint::foldersOf({arguments.begin() + 3, arguments.end()}));
}
