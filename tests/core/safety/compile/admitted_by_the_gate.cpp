// Compiles: an Admitted comes from the gate, and can be copied and read by anybody.
#include "core/safety/admit.h"

namespace {

using lidlark::safety::Admission;
using lidlark::safety::Admitted;

std::size_t itemsOf(Admission admission)
{
    const Admitted *admitted = std::get_if<Admitted>(&admission);
    return admitted ? admitted->items().size() : 0;
}

} // namespace

std::size_t readGate(const lidlark::catalogue::Activity &activity,
                     const lidlark::safety::Situation &situation)
{
    return itemsOf(lidlark::safety::admit(activity, situation));
}
