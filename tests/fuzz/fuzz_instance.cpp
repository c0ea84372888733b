#include "tests/fuzz/target.h"

#include "core/rotation/instance.h"

#include <algorithm>

namespace lidlark::fuzz {

namespace {

using rotation::Entry;
using rotation::Instance;

void checkEntry(const Entry &entry, const rotation::MenuProblem &problem)
{
    for (const rotation::Amount &amount : entry.amounts)
        must(amount.curve >= 0 && amount.curve < static_cast<int>(problem.curves.size()),
             "an activity puts its minutes on a curve that is there");
    for (const rotation::Need &need : entry.needs)
        must(need.item >= 0 && need.item < static_cast<int>(problem.stock.size()),
             "an activity needs an item that is there");
}

void check(const Instance &instance)
{
    must(instance.minutes.size() == instance.messy.size() && !instance.minutes.empty(),
         "each day has its limits");
    for (const Entry &entry : instance.problem.entries)
        checkEntry(entry, instance.problem);
    for (std::size_t day = 0; day < instance.minutes.size(); ++day) {
        const rotation::ChoiceRules rules = rulesOf(instance, day);
        must(rules.messyMost >= 0 && rules.messyMost <= static_cast<int>(rules.offers),
             "a day has no more mess than offers");
    }
}

} // namespace

void instance(std::string_view bytes)
{
    const auto read = rotation::readInstance(std::string(bytes));
    if (read)
        check(*read);
    else
        must(read.error().code == ErrorCode::Invalid && read.error().detail.starts_with("line "),
             "what is wrong has its line");
}

} // namespace lidlark::fuzz
