#include "core/catalogue/findings.h"

#include <algorithm>

namespace lidlark::catalogue {

void Findings::add(int line, std::string field, std::string reason)
{
    m_problems.push_back({m_file, line, std::move(field), std::move(reason)});
}

void Findings::addAt(std::string_view field, std::string reason)
{
    add(lineOf(field), std::string(field), std::move(reason));
}

void Findings::place(std::string field, int line)
{
    m_lines.insert_or_assign(std::move(field), line);
}

std::vector<Problem> Findings::take()
{
    std::stable_sort(m_problems.begin(), m_problems.end(),
                     [](const Problem &a, const Problem &b) { return a.line < b.line; });
    return std::move(m_problems);
}

int Findings::lineOf(std::string_view field) const
{
    while (true) {
        const auto found = m_lines.find(field);
        if (found != m_lines.end())
            return found->second;
        const std::size_t cut = field.find_last_of(".[");
        if (cut == std::string_view::npos)
            return 1;
        field = field.substr(0, cut);
    }
}

} // namespace lidlark::catalogue
