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
        break;
    }
    return {"Taken out of the house", {}};
}

} // namespace lidlark::wording
