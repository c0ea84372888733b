#include "core/wording/closing_words.h"

namespace lidlark::wording {

Sentence countHomeFirst(const Argument &name, int home, int due)
{
    return {say("First count the %1 home: %2 of %3."), {name, inDigits(home), inDigits(due)}};
}

Sentence outOfReach(const std::vector<std::string> &aliases)
{
    switch (aliases.size()) {
    case 0:
        return {say("Keep the box out of reach of small children."), {}};
    case 1:
        return {say("Keep the box out of %1's reach."), {aliases[0]}};
    case 2:
        return {say("Keep the box out of reach of %1 and %2."), {aliases[0], aliases[1]}};
    default:
        break;
    }
    return {say("Keep the box out of reach of %1, %2 and all other small children."),
            {aliases[0], aliases[1]}};
}

} // namespace lidlark::wording
