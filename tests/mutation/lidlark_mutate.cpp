// lidlark-mutate OUTPUT ROOT FILE...: writes a copy of each file, named from ROOT on, below OUTPUT,
// with mutants in it that lie dormant until one is chosen (chosen.h); and OUTPUT/mutants.txt, a
// line a mutant: number, file, line, what was done, the line itself, parted by tabs.

#include "tests/mutation/find_mutants.h"

#include <cstdio>
#include <exception>
#include <filesystem>
#include <fstream>
#include <memory>
#include <sstream>
#include <stdexcept>

namespace lidlark::mutation {

namespace {

using Sources = std::vector<std::unique_ptr<CppSource>>;

std::string contentsOf(const std::filesystem::path &path)
{
    std::ifstream file(path);
    std::ostringstream text;
    text << file.rdbuf();
    if (!file)
        throw std::runtime_error("cannot read " + path.string());
    return text.str();
}

void write(const std::filesystem::path &path, const std::string &text)
{
    std::filesystem::create_directories(path.parent_path());
    std::ofstream file(path);
    file << text;
    if (!file.flush())
        throw std::runtime_error("cannot write " + path.string());
}

std::string mutated(const CppSource &source, const std::set<std::string> &functions,
                    std::vector<Mutant> &all)
{
    MutatedCopy copy(source, all);
    mutateAll(copy, functions);
    return copy.text();
}

std::string listOf(const std::vector<Mutant> &all)
{
    std::ostringstream list;
    for (std::size_t i = 0; i < all.size(); ++i)
        list << i + 1 << '\t' << all[i].file << '\t' << all[i].line << '\t' << all[i].what << '\t'
             << all[i].lineText << '\n';
    return list.str();
}

void run(const std::filesystem::path &output, const std::filesystem::path &root,
         const std::vector<std::string> &files)
{
    Sources sources;
    std::set<std::string> functions;
    for (const std::string &file : files) {
        sources.push_back(std::make_unique<CppSource>(file, contentsOf(root / file)));
        functions.merge(functionsWithoutValue(*sources.back()));
    }
    std::vector<Mutant> all;
    for (const auto &source : sources)
        write(output / source->name(), mutated(*source, functions, all));
    write(output / "mutants.txt", listOf(all));
}

} // namespace

} // namespace lidlark::mutation

int main(int count, char **words)
{
    if (count < 4) {
        std::fputs("usage: lidlark-mutate OUTPUT ROOT FILE...\n", stderr);
        return 2;
    }
    try {
        lidlark::mutation::run(words[1], words[2], {words + 3, words + count});
    } catch (const std::exception &problem) {
        std::fprintf(stderr, "lidlark-mutate: %s\n", problem.what());
        return 1;
    }
    return 0;
}
