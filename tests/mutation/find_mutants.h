#pragma once

#include "tests/mutation/mutated_copy.h"

#include <set>
#include <string>

/// The kinds of mutants. None of these functions knows a rule, a tag or a line by name.
namespace lidlark::mutation {

/// `if (x)` and `x ? a : b`: never, and always.
void mutateConditions(MutatedCopy &copy);

/// `a && b`, `a || b`: either operand left out.
void mutateOperands(MutatedCopy &copy);

/// `a | b`: an operand left out, nothing in its place; `a & b`: one of them alone; `a.without(b)`:
/// nothing taken away; `std::max` and `std::min`: the other.
void mutateSets(MutatedCopy &copy);

/// `<` and `<=`, `>` and `>=`, `==` and `!=`: the other of the two.
void mutateComparisons(MutatedCopy &copy);

/// `Tag::X`: none. `Supervision::X`: the two others. `ReasonCode::X`: the next. `true` and `false`:
/// the other. Whole numbers: one less, one more, and 0 where one is returned.
void mutateValues(MutatedCopy &copy);

/// `case X::Y:`: left out, so that the default holds.
void mutateLabels(MutatedCopy &copy);

/// `{.name = value}`: the field left empty.
void mutateFields(MutatedCopy &copy);

/// A call whose value is not used, or a setting of something: skipped.
void mutateStatements(MutatedCopy &copy);

/// `for (rule : {a, b, c})`, where a, b and c are among @p functions: one skipped.
void mutateRuleLists(MutatedCopy &copy, const std::set<std::string> &functions);

/// Names of functions without a value in @p source.
std::set<std::string> functionsWithoutValue(const CppSource &source);

/// Takes out all that must be known when the program is compiled: `constexpr`, static_assert.
void decideWhenRun(MutatedCopy &copy);

/// Every kind of mutant in one copy. @param functions as for mutateRuleLists.
void mutateAll(MutatedCopy &copy, const std::set<std::string> &functions);

} // namespace lidlark::mutation
