#include "core/usecase/swaps_to_ask.h"

namespace lidlark::usecase {

std::vector<box::RequestSaid> swapsToAsk(const std::map<ItemId, int> &pieces,
                                         const catalogue::Catalogue &catalogue, child::Avoided what)
{
    std::vector<box::RequestSaid> wanted;
    for (const auto &[item, count] : pieces) {
        const catalogue::ItemKind *kind = catalogue.item(item);
        if (kind == nullptr || !kind->swap || count <= 0 || !kind->tags.has(child::tagOf(what)))
            continue;
        const auto swap = pieces.find(kind->swap->with);
        if (swap == pieces.end() || swap->second <= 0)
            wanted.push_back({kind->swap->with, 0, box::RequestStep::Asked, item});
    }
    return wanted;
}

} // namespace lidlark::usecase
