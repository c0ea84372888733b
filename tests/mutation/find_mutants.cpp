#include "tests/mutation/find_mutants.h"

namespace lidlark::mutation {

void mutateAll(MutatedCopy &copy, const std::set<std::string> &functions)
{
    decideWhenRun(copy);
    mutateConditions(copy);
    mutateOperands(copy);
    mutateComparisons(copy);
    mutateSets(copy);
    mutateValues(copy);
    mutateLabels(copy);
    mutateFields(copy);
    mutateStatements(copy);
    mutateRuleLists(copy, functions);
}

} // namespace lidlark::mutation
