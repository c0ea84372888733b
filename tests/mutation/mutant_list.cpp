#include "tests/mutation/mutant_list.h"

#include <stdexcept>

namespace lidlark::mutation {

namespace {

std::vector<std::string> split(std::string_view text, char by)
{
    std::vector<std::string> parts;
    std::size_t first = 0;
    for (std::size_t end = text.find(by); end != std::string_view::npos;
         end = text.find(by, first)) {
        parts.emplace_back(text.substr(first, end - first));
        first = end + 1;
    }
    if (first < text.size())
        parts.emplace_back(text.substr(first));
    return parts;
}

std::string trimmed(const std::string &text)
{
    const std::size_t first = text.find_first_not_of(" \t\r");
    if (first == std::string::npos)
        return {};
    return text.substr(first, text.find_last_not_of(" \t\r") + 1 - first);
}

Equivalent equivalentFrom(const std::vector<std::string> &lines)
{
    constexpr std::string_view why = "why: ";
    if (lines.size() != 4 || !lines.back().starts_with(why))
        throw std::runtime_error("equivalent.txt: no entry of four lines: " + lines.front());
    return {lines[0], lines[1], lines[2], lines[3].substr(why.size())};
}

} // namespace

std::string ListedMutant::text() const
{
    return file + ":" + std::to_string(line) + ": " + what + "   [" + lineText + "]";
}

std::vector<ListedMutant> mutantsFrom(std::string_view list)
{
    std::vector<ListedMutant> mutants;
    for (const std::string &line : split(list, '\n')) {
        const std::vector<std::string> fields = split(line, '\t');
        if (fields.size() != 5)
            throw std::runtime_error("mutants.txt: no mutant: " + line);
        mutants.push_back(
            {std::stoi(fields[0]), fields[1], std::stoi(fields[2]), fields[3], fields[4]});
    }
    return mutants;
}

std::vector<Equivalent> equivalentsFrom(std::string_view list)
{
    std::vector<Equivalent> all;
    std::vector<std::string> entry;
    std::vector<std::string> lines = split(list, '\n');
    lines.emplace_back();
    for (const std::string &raw : lines) {
        const std::string line = trimmed(raw);
        if (line.starts_with('#'))
            continue;
        if (!line.empty()) {
            entry.push_back(line);
        } else if (!entry.empty()) {
            all.push_back(equivalentFrom(entry));
            entry.clear();
        }
    }
    return all;
}

} // namespace lidlark::mutation
