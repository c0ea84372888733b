#include "core/workbench/hygiene.h"

#include "core/workbench/handed.h"

#include <algorithm>

namespace lidlark::workbench {

Care careFor(const catalogue::ItemKind *kind)
{
    const bool lasts = kind != nullptr && kind->cleanable && !kind->singleChild &&
                       !kind->life.singleUse && kind->comesBack != catalogue::ComesBack::UsedUp;
    return lasts ? Care::Clean : Care::Replace;
}

std::vector<StillToDo> stillToDo(const BoxStatus &status, const catalogue::Catalogue &catalogue)
{
    std::vector<StillToDo> left;
    for (const auto &[item, pieces] : status.pieces) {
        const Care care = careFor(catalogue.item(kindOf(item)));
        const auto tended = status.tended.find(item);
        const bool done =
            tended != status.tended.end() && (care == Care::Clean || tended->second.replaced);
        if (!done)
            left.push_back({item, care});
    }
    std::ranges::stable_sort(left, {}, &StillToDo::care);
    return left;
}

IssueBar issueBarOf(const std::optional<BoxStatus> &status, const catalogue::Catalogue &catalogue)
{
    if (!status || status->standing == Standing::New)
        return IssueBar::None;
    if (status->standing == Standing::Retired)
        return IssueBar::Retired;
    if (status->standing == Standing::Issued)
        return IssueBar::StillOut;
    return stillToDo(*status, catalogue).empty() ? IssueBar::None : IssueBar::ToBeTended;
}

} // namespace lidlark::workbench
