#pragma once

#include "core/catalogue/catalogue.h"

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace lidlark::catalogue {

/// What is wrong with one file, and where each of its fields stands. Fields are written as paths:
/// "minutes.play", "items[2].count_back" (the second line of the list).
class Findings
{
public:
    explicit Findings(std::string file) : m_file(std::move(file)) {}

    void add(int line, std::string field, std::string reason);
    /// At the line on which the field, or the nearest field around it, was read.
    void addAt(std::string_view field, std::string reason);
    /// Remembers where a field stands.
    void place(std::string field, int line);

    [[nodiscard]] bool empty() const { return m_problems.empty(); }
    /// In the order of lines.
    [[nodiscard]] std::vector<Problem> take();

private:
    [[nodiscard]] int lineOf(std::string_view field) const;

    std::string m_file;
    std::map<std::string, int, std::less<>> m_lines;
    std::vector<Problem> m_problems;
};

} // namespace lidlark::catalogue
