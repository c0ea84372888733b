#pragma once

#include "tests/mutation/cpp_source.h"

#include <string>
#include <vector>

namespace lidlark::mutation {

/// One small wrong turn in the gate, chosen by its number when the program runs.
struct Mutant {
    std::string file;
    int line = 0;
    std::string what;     ///< "operand left out: home".
    std::string lineText; ///< The line itself, so that a list can name it when lines have moved.
};

/// "::lidlark::mutation::below(7, ": how a call of a function of chosen.h begins.
std::string callOf(const std::string &function, const std::string &number);
/// "::lidlark::mutation::is(7)".
std::string isChosen(const std::string &number);

/// Which of two wraps of the same span is the outer one.
enum class Layer { Statement, Condition, Either, Both, Comparison, Field, Union, Overlap, Value };

/// A copy of one source in which mutants lie dormant.
class MutatedCopy
{
public:
    /// @param all mutants of every file; the number of one is its place, counted from 1.
    MutatedCopy(const CppSource &source, std::vector<Mutant> &all) : m_source(source), m_all(all) {}

    /// @returns the number of a new mutant at @p token, as text.
    std::string mutant(std::size_t token, const std::string &what);
    void wrap(Span span, Layer layer, const std::string &before, const std::string &after);
    void replace(std::size_t token, const std::string &text);

    [[nodiscard]] const CppSource &source() const { return m_source; }
    [[nodiscard]] std::string text() const;

private:
    struct Wrap {
        std::size_t begin; ///< Offsets in the text.
        std::size_t end;
        Layer layer;
        std::string before;
        std::string after;
        bool replaces;
    };

    [[nodiscard]] std::vector<Wrap> outerFirst() const;

    const CppSource &m_source;
    std::vector<Mutant> &m_all;
    std::vector<Wrap> m_wraps;
};

} // namespace lidlark::mutation
