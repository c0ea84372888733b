#include "core/usecase/travel_page.h"

#include <algorithm>
#include <tuple>

namespace lidlark::usecase {

namespace {

bool needsNoBox(const safety::Admitted &admitted)
{
    return admitted.activity().noBox &&
           std::ranges::none_of(admitted.items(), [](const catalogue::ItemUse &use) {
               return use.source == catalogue::Source::Box;
           });
}

bool isLoud(const safety::Admitted &admitted)
{
    return admitted.activity().sound != catalogue::Sound::Quiet ||
           admitted.cautions().has(catalogue::Tag::Noise);
}

} // namespace

TravelPage travelPageOf(const Family &family, const catalogue::Catalogue &catalogue, Day today)
{
    TravelPage page{family.box.alias, today, {}};
    const safety::Gated gated = gatedFor(family, catalogue, safety::Room{}, today, true);
    for (const safety::Admitted &admitted : gated.admitted) {
        if (needsNoBox(admitted))
            page.entries.push_back(admitted);
    }
    std::stable_sort(page.entries.begin(), page.entries.end(), [](const auto &a, const auto &b) {
        return std::tuple(isLoud(a), a.activity().name) < std::tuple(isLoud(b), b.activity().name);
    });
    return page;
}

} // namespace lidlark::usecase
