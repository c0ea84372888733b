#pragma once

#include "tests/mutation/cpp_source.h"

#include <string>
#include <string_view>
#include <vector>

namespace lidlark::mutation {

/// An expression between two signs that bind less than `||`.
struct Expression {
    Span span;
    std::string endedBy; ///< "?" where it is what a choice depends on.
};

/// All expressions of a source that are live, inner ones too, but for the heads of loops: with
/// another condition a loop may never end.
std::vector<Expression> expressionsOf(const CppSource &source);

/// The parts of @p span between the signs @p sign that lie in no brackets; one where there is none.
std::vector<Span> partsOf(const CppSource &source, Span span, std::string_view sign);

} // namespace lidlark::mutation
