#include "burst_view_model.h"

#include "mobile/bridge/household.h"

namespace lidlark::mobile {

bool BurstViewModel::note(bool allFound)
{
    const auto &catalogue = m_playInHand->household()->catalogue();
    for (const catalogue::ItemUse &use : m_playInHand->items()) {
        const catalogue::ItemKind *kind = catalogue.item(use.item);
        if (kind == nullptr || !kind->tags.has(catalogue::Tag::Balloon))
            continue;
        box::Exceptions burst;
        burst.set(allFound ? box::ExceptionKind::UsedUp : box::ExceptionKind::Lost, 1);
        return m_playInHand->nameExceptions(use.item, burst);
    }
    return true; // a scarf cannot burst: there is nothing to write
}

} // namespace lidlark::mobile
