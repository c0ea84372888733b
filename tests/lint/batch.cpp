#include "tests/lint/batch.h"

#include <algorithm>
#include <map>
#include <regex>

namespace lidlark::lint {

namespace {

/// What moc makes for a target lies in a folder of its own, and a screen finds its own headers in
/// its own; a test knows where it lies.
const std::regex &ownToTheTarget()
{
    static const std::regex form(R"( -I\S+_autogen/include| -I\S+/mobile/[a-z]+(?= )|)"
                                 R"( -DQT_TESTCASE_(BUILD|SOURCE)DIR=\S+)");
    return form;
}

} // namespace

std::vector<Batch> batchesOf(const std::vector<CompileCommand> &commands, std::size_t most)
{
    std::vector<Batch> batches;
    std::map<std::string, Batch> open;
    for (const CompileCommand &command : commands) {
        const std::string flags = std::regex_replace(command.flags, ownToTheTarget(), "");
        Batch &batch = open[flags];
        batch.push_back(command);
        if (batch.size() == most)
            batches.push_back(std::exchange(batch, {}));
    }
    for (const auto &[likeness, batch] : open) {
        if (!batch.empty())
            batches.push_back(batch);
    }
    std::ranges::stable_sort(batches, std::ranges::greater(), &Batch::size);
    return batches;
}

std::pair<Batch, Batch> halvesOf(const Batch &batch)
{
    const auto middle = batch.begin() + static_cast<std::ptrdiff_t>(batch.size() / 2);
    return {Batch(batch.begin(), middle), Batch(middle, batch.end())};
}

std::string flagsOf(const Batch &batch)
{
    std::string flags = batch.front().flags;
    for (std::size_t i = 1; i < batch.size(); ++i) {
        const std::string &others = batch[i].flags;
        for (std::sregex_iterator own(others.begin(), others.end(), ownToTheTarget()), end;
             own != end; ++own) {
            if (own->str().starts_with(" -I"))
                flags += own->str();
        }
    }
    return flags;
}

std::string sourceOf(const Batch &batch)
{
    std::string text;
    int program = 0;
    for (const CompileCommand &command : batch)
        text += "#undef main\n#define main mainOf" + std::to_string(++program) + "\n#include \"" +
                command.file.string() +
                "\" // NOLINT(bugprone-suspicious-include): read together for speed\n";
    return text;
}

} // namespace lidlark::lint
