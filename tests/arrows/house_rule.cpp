#include "tests/arrows/house_rule.h"

#include <algorithm>
#include <cctype>
#include <regex>

namespace lidlark::arrows {

namespace {

struct Look {
    std::regex form;
    std::string reason;
};

const std::vector<Look> &looks()
{
    static const std::vector<Look> all{
        {std::regex(R"re(["']#[0-9A-Fa-f]{3,8}["'])re"), "a hex colour outside mobile/design"},
        {std::regex(R"(\bQt\.(rgba|hsla|hsva|color|tint)\b)"),
         "a colour made outside mobile/design"},
        {std::regex(R"(\bfont\.family\b|\bfamily\s*:|\bQt\.font\b)"),
         "a font chosen outside mobile/design"},
        {std::regex(R"(\b(pixelSize|pointSize)\s*:\s*[0-9])"), "a text size outside mobile/design"},
        {std::regex(R"(\b([a-zA-Z]*([wW]idth|[hH]eight|[sS]pacing|[mM]argins?|[pP]adding|[rR]adius)"
                    R"()|x|y|[a-z]*(Inset|Margin))\s*:\s*-?[1-9][0-9]*(\.[0-9]+)?\s*(;|\}|$))"),
         "a number of pixels outside mobile/design"},
    };
    return all;
}

} // namespace

const std::set<std::string> &topLevelNames()
{
    static const std::set<std::string> names{"CMakeLists.txt", "README.md", "DEVELOPERS.md",
                                             "LICENSE",        "core",      "mobile",
                                             "assets",         "tests",     "packaging"};
    return names;
}

std::vector<Complaint> wrongTopLevel(const std::set<std::string> &names)
{
    std::vector<Complaint> complaints;
    for (const std::string &name : names) {
        const bool isFree = name.starts_with(".") || name == "build" || name.starts_with("build-");
        if (!isFree && !topLevelNames().contains(name))
            complaints.push_back({name, 0, "does not belong at the top"});
    }
    for (const std::string &name : topLevelNames()) {
        if (!names.contains(name))
            complaints.push_back({name, 0, "is missing at the top"});
    }
    return complaints;
}

int lengthOf(const SourceFile &file)
{
    return static_cast<int>(linesOf(file.text).size());
}

std::vector<Complaint> emptyNames(const SourceFile &file)
{
    std::string name = file.path;
    std::ranges::transform(name, name.begin(), [](unsigned char letter) {
        return static_cast<char>(std::tolower(letter));
    });
    static const std::regex form("util|manager|helper");
    std::smatch match;
    if (!std::regex_search(name, match, form))
        return {};
    return {{file.path, 0, "\"" + match.str() + "\" says nothing about what is inside"}};
}

std::vector<Complaint> bareNotes(const SourceFile &file)
{
    // Put together here, so that this file does not read as a note itself.
    static const std::regex note("\\b(TO"
                                 "DO|FIX"
                                 "ME|X"
                                 "XX)\\b");
    static const std::regex reasoned("\\b(TO"
                                     "DO|FIX"
                                     "ME|X"
                                     "XX)\\b:(\\s+\\S+){4}");
    std::vector<Complaint> complaints;
    int number = 0;
    for (const std::string_view piece : linesOf(file.text)) {
        const std::string line(piece);
        ++number;
        if (std::regex_search(line, note) && !std::regex_search(line, reasoned))
            complaints.push_back({file.path, number, "unfinished work without its reason"});
    }
    return complaints;
}

std::vector<Complaint> strayLooks(const SourceFile &file)
{
    std::vector<Complaint> complaints;
    if (!file.path.ends_with(".qml") || !file.path.starts_with("mobile/") ||
        file.path.starts_with("mobile/design/"))
        return complaints;
    const std::string code = withoutComments(file.text);
    int number = 0;
    for (const std::string_view piece : linesOf(code)) {
        const std::string line(piece);
        ++number;
        for (const Look &look : looks()) {
            if (std::regex_search(line, look.form))
                complaints.push_back({file.path, number, look.reason});
        }
    }
    return complaints;
}

} // namespace lidlark::arrows
