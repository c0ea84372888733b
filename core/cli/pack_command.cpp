#include "core/base/packed_tree.h"
#include "core/cli/commands.h"
#include "core/cli/file_contents.h"

#include <filesystem>
#include <fstream>
#include <iostream>

namespace lidlark::cli {

namespace {

namespace fs = std::filesystem;

/// @returns whether the file was read, packed and written; a fault is named with its line.
bool packOne(const fs::path &from, const fs::path &to)
{
    const auto tree = readYaml(contentsOf(from).value_or(""));
    if (const auto *fault = std::get_if<YamlFault>(&tree)) {
        std::cerr << from.string() << ':' << fault->line << ": " << fault->reason << '\n';
        return false;
    }
    const std::string packed = packTree(std::get<YamlNode>(tree));
    if (contentsOf(to) == packed)
        return true; // keeps its time, so that nothing is built again for it
    std::error_code failed;
    fs::create_directories(to.parent_path(), failed);
    std::ofstream file(to, std::ios::binary);
    file << packed;
    file.close();
    if (file.fail())
        std::cerr << to.string() << " could not be written.\n";
    return !file.fail();
}

} // namespace

int runPack(const PackOptions &asked)
{
    std::error_code missing;
    bool sound = true;
    bool any = false;
    for (const fs::directory_entry &entry : fs::recursive_directory_iterator(asked.from, missing)) {
        if (entry.path().extension() != ".yaml")
            continue;
        any = true;
        const fs::path place = fs::relative(entry.path(), asked.from, missing);
        sound = packOne(entry.path(), fs::path(asked.to) / place) && sound;
    }
    if (!any)
        std::cerr << asked.from << " holds no .yaml file.\n";
    return any && sound ? 0 : 1;
}

} // namespace lidlark::cli
