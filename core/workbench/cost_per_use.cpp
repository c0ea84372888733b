#include "core/workbench/cost_per_use.h"

namespace lidlark::workbench {

std::optional<CostPerUse> costPerUse(std::span<const BoxInUse> boxes)
{
    std::int64_t pence = 0; // at most 10^4 boxes of 10^13 pence: twice that is within 64 bits
    std::int64_t uses = 0;
    for (const BoxInUse &box : boxes) {
        pence += box.material.pence;
        uses += box.uses;
    }
    if (boxes.size() < leastBoxesForUse || uses <= 0)
        return std::nullopt;
    return CostPerUse{boxes.size(), {(2 * pence + uses) / (2 * uses)}};
}

} // namespace lidlark::workbench
