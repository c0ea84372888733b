#include "tests/lint/tidy.h"

#include "core/base/digest.h"
#include "tests/arrows/source_file.h"

#include <nlohmann/json.hpp>

#include <array>
#include <cstdio>
#include <fstream>
#include <regex>
#include <utility>

namespace lidlark::lint {

namespace {

/// Every check goes through all that a file includes. These take close to half the time (measured
/// with --enable-check-profile), and in this code have found nothing: the slow mode's.
constexpr auto dearChecks =
    "-bugprone-reserved-identifier,-bugprone-stringview-nullptr,-modernize-use-using,"
    "-bugprone-infinite-loop,-bugprone-standalone-empty,-bugprone-unused-return-value,"
    "-bugprone-suspicious-string-compare,-bugprone-multiple-statement-macro,"
    "-bugprone-assert-side-effect,-bugprone-suspicious-semicolon,"
    "-bugprone-not-null-terminated-result";

/// For a POSIX shell.
std::string quoted(const std::string &word)
{
    return "'" + std::regex_replace(word, std::regex("'"), R"('\'')") + "'";
}

struct Answer {
    int status = -1;
    std::string output; ///< Standard output and error.
};

Answer ask(const std::string &command)
{
    Answer answer;
    FILE *pipe = popen((command + " 2>&1").c_str(), "r");
    if (pipe == nullptr)
        return answer;
    std::array<char, 4096> piece{};
    for (std::size_t read = 0; (read = fread(piece.data(), 1, piece.size(), pipe)) > 0;)
        answer.output.append(piece.data(), read);
    answer.status = pclose(pipe);
    return answer;
}

} // namespace

Tidy::Tidy(std::filesystem::path program, std::filesystem::path root, std::filesystem::path scratch,
           bool whole)
    : m_program(std::move(program)), m_root(std::move(root)), m_scratch(std::move(scratch)),
      m_leftOut(whole ? "" : dearChecks)
{
}

std::string Tidy::settings() const
{
    return ask(quoted(m_program.string()) + " --version").output +
           arrows::contentsOf(m_root / ".clang-tidy") + m_leftOut;
}

Tidy::Verdict Tidy::read(const Batch &batch) const
{
    const std::string text = sourceOf(batch);
    const std::filesystem::path folder = m_scratch / hexOf(blake2b(text)).substr(0, 16);
    const std::filesystem::path source = folder / "batch.cpp";
    std::filesystem::create_directories(folder);
    std::ofstream(source) << text;
    const nlohmann::json entry{{"directory", batch.front().directory},
                               {"file", source.string()},
                               {"command", flagsOf(batch) + " -c " + source.string()}};
    std::ofstream(folder / "compile_commands.json") << nlohmann::json::array({entry});

    // GCC's own warning options mean nothing to clang; what the build generates is not ours. Names
    // of one file shadow another's only because both are read as one: GCC looks at each alone.
    const Answer answer =
        ask(quoted(m_program.string()) + " --quiet -p " + quoted(folder.string()) +
            " --config-file=" + quoted((m_root / ".clang-tidy").string()) +
            " --header-filter=" + quoted("^" + m_root.string() + "/(core|mobile|tests)/") +
            " --checks=" + quoted(m_leftOut) +
            " --extra-arg=-Wno-unknown-warning-option --extra-arg=-Wno-shadow " +
            quoted(source.string()));
    std::filesystem::remove_all(folder);
    Verdict verdict{answer.status == 0,
                    answer.output.find("[clang-diagnostic-error]") == std::string::npos,
                    findingsIn(answer.output)};
    if (!verdict.isClean && verdict.findings.empty())
        verdict.findings.push_back(answer.output);
    return verdict;
}

std::vector<std::string> findingsIn(const std::string &output)
{
    static const std::regex begins(R"(^\S+:\d+:\d+: (warning|error): .*|^(warning|error): .*)");
    std::vector<std::string> findings;
    for (const std::string_view piece : arrows::linesOf(output)) {
        const std::string line(piece);
        if (std::regex_match(line, begins))
            findings.emplace_back();
        if (!findings.empty())
            findings.back() += line + "\n";
    }
    return findings;
}

} // namespace lidlark::lint
