#include "core/wording/box_words.h"

namespace lidlark::wording {

Sentence boxActWords(box::Act act)
{
    switch (act) {
    case box::Act::FloorChecked:
        return {"Floor checked, not found", {}};
    case box::Act::Found:
        return {"Found", {}};
    case box::Act::TakenOut:
        return {"Taken out of the house", {}};
    case box::Act::CountedIn:
        return {"Counted in", {}};
    case box::Act::Counted:
        return {"Counted", {}};
    case box::Act::Gone:
        break;
    }
    return {"Gone", {}};
}

} // namespace lidlark::wording
