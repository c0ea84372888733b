#include "item_words.h"

#include <QCoreApplication>

#include "core/wording/count_words.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

namespace {

QString tr(const char *text, int number = -1)
{
    return QCoreApplication::translate("ItemWords", text, nullptr, number);
}

QString requestTag(const box::Request &request)
{
    return request.step == box::RequestStep::OnItsWay
               ? tr(QT_TRANSLATE_NOOP("ItemWords", "on its way"))
               : tr(QT_TRANSLATE_NOOP("ItemWords", "asked for"));
}

} // namespace

QString itemNameInside(const usecase::BoxItem &item)
{
    return fromCore(item.kind != nullptr ? item.kind->name : item.row.item.value);
}

QString itemName(const usecase::BoxItem &item)
{
    return fromCore(wording::capital(toCore(itemNameInside(item))));
}

QString itemDrawing(const usecase::BoxItem &item)
{
    return fromCore(item.kind != nullptr ? item.kind->drawing : std::string());
}

QString countText(const usecase::BoxItem &item)
{
    if (item.row.high == 0)
        return tr(QT_TRANSLATE_NOOP("ItemWords", "none"));
    return translated(wording::rangeWords(item.row.low, item.row.high));
}

QString wellTag(const usecase::BoxItem &item)
{
    const store::ItemRow &row = item.row;
    if (row.low != row.high)
        return tr(QT_TRANSLATE_NOOP("ItemWords", "which?"));
    if (row.pleaseCount)
        return tr(QT_TRANSLATE_NOOP("ItemWords", "count it"));
    if (row.care.mouthed)
        return tr(QT_TRANSLATE_NOOP("ItemWords", "wash it"));
    if (item.freshness.pastDate > 0)
        return tr(QT_TRANSLATE_NOOP("ItemWords", "throw away"));
    if (item.freshness.useSoon)
        return tr(QT_TRANSLATE_NOOP("ItemWords", "use soon"));
    if (item.lookAlone && row.high > 0)
        return tr(QT_TRANSLATE_NOOP("ItemWords", "look at it"));
    if (item.request && item.request->isOpen())
        return requestTag(*item.request);
    if (row.out > 0)
        return tr(QT_TRANSLATE_NOOP("ItemWords", "%1 out")).arg(row.out);
    return item.runsLow ? tr(QT_TRANSLATE_NOOP("ItemWords", "low")) : QString();
}

QString outText(int out)
{
    return out > 0 ? tr(QT_TRANSLATE_N_NOOP("ItemWords", "%n still in use."), out) : QString();
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
