#include "core/wording/box_words.h"

namespace lidlark::wording {

Sentence boxActWords(box::Act act)
{
    switch (act) {
    case box::Act::FloorChecked:
        return {say("Floor checked, not found"), {}};
    case box::Act::Found:
        return {say("Found"), {}};
    case box::Act::TakenOut:
        return {say("Taken out of the house"), {}};
    case box::Act::CountedIn:
        return {say("Counted in"), {}};
    case box::Act::Counted:
        return {say("Counted"), {}};
    case box::Act::Gone:
        break;
    }
    return {say("Gone"), {}};
}

Sentence wholeBox()
{
    return {say("The whole box"), {}};
}

} // namespace lidlark::wording
