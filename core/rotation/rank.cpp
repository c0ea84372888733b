#include "core/base/digest.h"
#include "core/rotation/menu.h"

namespace lidlark::rotation {

std::uint64_t rankOf(const ChildId &child, Day day, PartOfDay part, const ActivityId &activity)
{
    std::string joined = child.value;
    joined += '\0';
    joined += toText(day);
    joined += '\0';
    joined += toText(part);
    joined += '\0';
    joined += activity.value;
    return leadingEight(blake2b(joined));
}

} // namespace lidlark::rotation
