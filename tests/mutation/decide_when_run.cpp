#include "tests/mutation/find_mutants.h"

namespace lidlark::mutation {

namespace {

/// Whether `constexpr` at @p token begins a function, not a constant.
bool beginsFunction(const CppSource &source, std::size_t token)
{
    for (std::size_t i = token + 1; i < source.size(); ++i) {
        if (source.is(i, "("))
            return true;
        if (source.is(i, "=") || source.is(i, "{") || source.is(i, ";"))
            return false;
    }
    return false;
}

std::string insteadOfConstexpr(const CppSource &source, std::size_t token)
{
    if (beginsFunction(source, token))
        return token > 0 && source.is(token - 1, "inline") ? "" : "inline";
    return source.is(token + 1, "const") ? "" : "const";
}

} // namespace

void decideWhenRun(MutatedCopy &copy)
{
    const CppSource &source = copy.source();
    for (std::size_t i = 0; i < source.size(); ++i) {
        // A constant of a class is no mutant's business, and may need to be known to the compiler.
        const bool isOfClass = source.opens(source.around(i), Brace::Class);
        if (source.is(i, "constexpr") && (!isOfClass || beginsFunction(source, i)) &&
            (i == 0 || !source.is(i - 1, "if")))
            copy.replace(i, insteadOfConstexpr(source, i));
        if (source.is(i, "static_assert")) {
            for (; !source.is(i, ";"); ++i)
                copy.replace(i, "");
        }
    }
}

} // namespace lidlark::mutation
