#include "core/usecase/restock_page.h"

#include "core/box/box_code.h"
#include "core/box/well_order.h"
#include "core/store/box_repository.h"
#include "core/store/recording.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <set>

namespace lidlark::usecase {

namespace {

bool waits(const box::Request &request)
{
    return request.step < box::RequestStep::OnItsWay;
}

int missingOf(const store::ItemRow &row)
{
    return std::max(1, row.expected - row.high - row.out);
}

using ByItem = std::map<ItemId, std::vector<RestockBox>>;

void addBox(const store::BoxRow &box, const std::vector<store::ItemRow> &rows, ByItem &items)
{
    for (const store::ItemRow &row : rows) {
        if (row.requests.empty() || !waits(row.requests.back()))
            continue;
        const box::Request &request = row.requests.back();
        items[row.item].push_back(
            {box.alias, box::boxCode(box.id), missingOf(row), request.step, request.insteadOf});
    }
}

} // namespace

int RestockItem::pieces() const
{
    return std::accumulate(boxes.begin(), boxes.end(), 0,
                           [](int sum, const RestockBox &box) { return sum + box.pieces; });
}

int RestockPage::boxes() const
{
    std::set<std::string> codes;
    for (const RestockItem &item : items) {
        for (const RestockBox &box : item.boxes)
            codes.insert(box.child + ' ' + box.code);
    }
    return static_cast<int>(codes.size());
}

Result<RestockPage> restockPageOf(Workplace &workplace)
{
    if (workplace.device.role != store::Role::Therapist)
        return Error{ErrorCode::NotAllowed, "restock round"};
    const auto today = store::todayOf(workplace.clock);
    if (!today)
        return today.error();
    store::BoxRepository boxes(workplace.database);
    const auto all = boxes.boxes();
    if (!all)
        return all.error();
    ByItem byItem;
    for (const store::BoxRow &box : *all) {
        const auto rows = boxes.items(box.id);
        if (!rows)
            return rows.error();
        addBox(box, *rows, byItem);
    }
    RestockPage page{today->day, {}};
    for (auto &[item, waiting] : byItem) {
        std::ranges::sort(waiting, {}, &RestockBox::child);
        page.items.push_back({item, std::move(waiting)});
    }
    std::stable_sort(page.items.begin(), page.items.end(), [](const auto &a, const auto &b) {
        return box::wellOf(a.item) < box::wellOf(b.item);
    });
    return page;
}

} // namespace lidlark::usecase
