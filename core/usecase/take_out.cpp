#include "core/usecase/take_out.h"

#include "core/safety/avoided_tags.h"

#include <algorithm>

namespace lidlark::usecase {

std::vector<TakeOut> takeOutOf(const Family &family, const catalogue::Catalogue &catalogue)
{
    std::vector<TakeOut> out;
    if (!family.sheet)
        return out;
    const catalogue::TagSet avoided = safety::avoidedTags(family.sheet->avoidances);
    for (const store::ItemRow &row : family.items) {
        const catalogue::ItemKind *kind = catalogue.item(row.item);
        if (kind == nullptr || row.high <= 0 || (kind->tags & avoided).empty())
            continue;
        TakeOut line{row.item, row.high, std::nullopt};
        if (kind->swap)
            line.instead = kind->swap->with;
        out.push_back(std::move(line));
    }
    std::sort(out.begin(), out.end(),
              [](const TakeOut &a, const TakeOut &b) { return a.item < b.item; });
    return out;
}

} // namespace lidlark::usecase
