#include "core/usecase/take_out.h"

#include <algorithm>

namespace lidlark::usecase {

namespace {

using child::Answer;

catalogue::TagSet avoidedBy(const child::HomeSheet &home)
{
    const child::Avoidances &avoid = home.avoidances;
    catalogue::TagSet tags;
    if (avoid.latex == Answer::Yes || avoid.latexRisk == Answer::Yes)
        tags.add(catalogue::Tag::Latex);
    if (avoid.wheat == Answer::Yes || avoid.coeliac == Answer::Yes)
        tags.add(catalogue::Tag::Wheat);
    return tags;
}

} // namespace

std::vector<TakeOut> takeOutOf(const Family &family, const catalogue::Catalogue &catalogue)
{
    std::vector<TakeOut> out;
    if (!family.sheet)
        return out;
    const catalogue::TagSet avoided = avoidedBy(*family.sheet);
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
