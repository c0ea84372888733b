#include "tests/lint/batch.h"

#include "tests/arrows/source_file.h"

#include <algorithm>
#include <map>
#include <regex>

namespace lidlark::lint {

namespace {

bool hasMain(const std::filesystem::path &file)
{
    static const std::regex form(R"(\n(int main\(|Q[A-Z_]*MAIN))");
    return std::regex_search(arrows::contentsOf(file), form);
}

} // namespace

std::vector<Batch> batchesOf(const std::vector<CompileCommand> &commands, std::size_t most)
{
    std::vector<Batch> batches;
    std::map<std::string, Batch> open;
    for (const CompileCommand &command : commands) {
        if (hasMain(command.file)) {
            batches.push_back({command});
            continue;
        }
        Batch &batch = open[command.flags + "\n" + command.file.parent_path().string()];
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

std::string sourceOf(const Batch &batch)
{
    std::string text;
    for (const CompileCommand &command : batch)
        text += "#include \"" + command.file.string() +
                "\" // NOLINT(bugprone-suspicious-include): read together for speed\n";
    return text;
}

} // namespace lidlark::lint
