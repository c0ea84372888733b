#include "item_words.h"

#include <QCoreApplication>

#include "core/wording/count_words.h"
#include "mobile/bridge/letters.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

namespace {

struct ItemWords {
    Q_DECLARE_TR_FUNCTIONS(ItemWords)
};

QString requestTag(const box::Request &request)
{
    return request.step == box::RequestStep::OnItsWay ? ItemWords::tr("on its way")
                                                      : ItemWords::tr("asked for");
}

} // namespace

QString itemNameInside(const usecase::BoxItem &item)
{
    return fromCore(item.kind != nullptr ? item.kind->name : item.row.item.value);
}

QString itemName(const usecase::BoxItem &item)
{
    return capitalised(itemNameInside(item));
}

QString itemDrawing(const usecase::BoxItem &item)
{
    return fromCore(item.kind != nullptr ? item.kind->drawing : std::string());
}

QString countText(const usecase::BoxItem &item)
{
    if (item.row.high == 0)
        return ItemWords::tr("none");
    return translated(wording::rangeWords(item.row.low, item.row.high));
}

QString wellTag(const usecase::BoxItem &item)
{
    const store::ItemRow &row = item.row;
    if (row.low != row.high)
        return ItemWords::tr("which?");
    if (row.pleaseCount)
        return ItemWords::tr("count it");
    if (row.care.mouthed)
        return ItemWords::tr("wash it");
    if (item.freshness.pastDate > 0)
        return ItemWords::tr("throw away");
    if (item.freshness.useSoon)
        return ItemWords::tr("use soon");
    if (item.lookAlone && row.high > 0)
        return ItemWords::tr("look at it");
    if (item.request && item.request->isOpen())
        return requestTag(*item.request);
    if (row.out > 0)
        return ItemWords::tr("%1 out").arg(numerals(row.out));
    return item.runsLow ? ItemWords::tr("low") : QString();
}

QString outText(int out)
{
    return out > 0 ? numerals(ItemWords::tr("%n still in use.", nullptr, out)) : QString();
}

bool isLow(const usecase::BoxItem &item)
{
    return item.runsLow || (item.none && !item.row.care.mouthed);
}

int missingPieces(const usecase::BoxItem &item)
{
    return std::max(1, item.row.expected - item.row.high - item.row.out);
}

} // namespace lidlark::mobile
