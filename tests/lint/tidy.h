#pragma once

#include "tests/lint/batch.h"

#include <filesystem>
#include <string>
#include <vector>

namespace lidlark::lint {

/// clang-tidy with the settings of the project.
class Tidy
{
public:
    struct Verdict {
        bool isClean = false;
        bool isReadable = true;            ///< False where the compiler itself stopped at an error.
        std::vector<std::string> findings; ///< Each with its lines, as clang-tidy prints them.
    };

    /// @param program the clang-tidy to run; @param root the project, which has a .clang-tidy;
    /// @param scratch a folder for the files that are made on the way; @param whole with the checks
    /// that take the most time and have found the least here.
    Tidy(std::filesystem::path program, std::filesystem::path root, std::filesystem::path scratch,
         bool whole);

    /// The version of the program and the project's settings, as text.
    [[nodiscard]] std::string settings() const;
    /// Reads all files of @p batch as one. May be called by several threads at once.
    [[nodiscard]] Verdict read(const Batch &batch) const;

private:
    std::filesystem::path m_program;
    std::filesystem::path m_root;
    std::filesystem::path m_scratch;
    std::string m_leftOut; ///< As clang-tidy's --checks takes them.
};

/// The findings in what clang-tidy printed: each begins with "file:line:column: ".
std::vector<std::string> findingsIn(const std::string &output);

} // namespace lidlark::lint
