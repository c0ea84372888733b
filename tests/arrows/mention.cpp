#include "tests/arrows/mention.h"

#include <regex>

namespace lidlark::arrows {

namespace {

using Form = Mention::Form;

bool isCpp(const std::string &path)
{
    return path.ends_with(".h") || path.ends_with(".cpp");
}

bool isQml(const std::string &path)
{
    return path.ends_with(".qml") || path.ends_with(".js");
}

Mention includeFrom(const std::string &what, int line)
{
    const std::size_t quote = what.find('"', 1);
    const std::size_t bracket = what.find('>');
    if (what.front() == '"' && quote != std::string::npos)
        return {Form::Quoted, line, what.substr(1, quote - 1)};
    if (what.front() == '<' && bracket != std::string::npos)
        return {Form::Angled, line, what.substr(1, bracket - 1)};
    return {Form::Unclear, line, what};
}

void addEvery(const std::string &text, const std::regex &form, Mention pattern,
              std::vector<Mention> &mentions)
{
    for (std::sregex_iterator match(text.begin(), text.end(), form), end; match != end; ++match) {
        pattern.target = match->str(1);
        mentions.push_back(pattern);
    }
}

void readCppLine(const std::string &text, int line, std::vector<Mention> &mentions)
{
    static const std::regex include(R"(^\s*#\s*(?:include|include_next|import)\s*(\S.*)$)");
    std::smatch match;
    if (std::regex_match(text, match, include))
        mentions.push_back(includeFrom(match.str(1), line));
}

void readQmlLine(const std::string &text, int line, std::vector<Mention> &mentions)
{
    static const std::regex module(R"(^\s*\.?import\s+([A-Za-z][\w.]*))");
    static const std::regex folder(R"(^\s*\.?import\s+"([^"]*)\")");
    static const std::regex upwards(R"("(\.\./[^"]*)\")");
    addEvery(text, module, {Form::Module, line, {}}, mentions);
    addEvery(text, folder, {Form::Path, line, {}}, mentions);
    if (!std::regex_search(text, folder))
        addEvery(text, upwards, {Form::Path, line, {}}, mentions);
}

void readResourcePaths(const std::string &text, int line, std::vector<Mention> &mentions)
{
    static const std::regex resource(R"("[^"]*Lidlark/([A-Z]\w*)/)");
    for (std::sregex_iterator match(text.begin(), text.end(), resource), end; match != end; ++match)
        mentions.push_back({Form::Module, line, "Lidlark." + match->str(1)});
}

} // namespace

std::vector<Mention> mentionsIn(const SourceFile &file)
{
    std::vector<Mention> mentions;
    if (!isCpp(file.path) && !isQml(file.path))
        return mentions;
    const std::string code = withoutComments(file.text);
    int number = 0;
    for (const std::string_view piece : linesOf(code)) {
        const std::string line(piece);
        ++number;
        if (isCpp(file.path))
            readCppLine(line, number, mentions);
        else
            readQmlLine(line, number, mentions);
        readResourcePaths(line, number, mentions);
    }
    return mentions;
}

} // namespace lidlark::arrows
