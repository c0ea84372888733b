#include "mobile/bridge/household.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

std::vector<usecase::BoxItem> Household::boxItems()
{
    const auto known = family();
    return known ? usecase::boxItemsOf(*known, *m_catalogue, today().day)
                 : std::vector<usecase::BoxItem>();
}

std::vector<usecase::ItemStanding> Household::itemsAround(const usecase::TodayMenu &today) const
{
    return usecase::itemsAround(today.family, *m_catalogue, today.gated);
}

std::optional<usecase::BoxItem> Household::boxItem(const ItemId &item)
{
    std::vector<usecase::BoxItem> items = boxItems();
    const auto found = std::find_if(items.begin(), items.end(), [&](const usecase::BoxItem &one) {
        return one.row.item == item;
    });
    if (found == items.end())
        return std::nullopt;
    return std::move(*found);
}

std::optional<usecase::ItemOutlook> Household::outlook(const usecase::BoxItem &item) const
{
    auto known = usecase::forecastOne(item.row, item.kind, today().day);
    return known ? *std::move(known) : std::nullopt;
}

bool Household::countIsDue()
{
    const auto known = family();
    return known && usecase::countIsDue(*known, today().day);
}

Outcome Household::answerQuestion(const std::string &question, const std::string &answer)
{
    return usecase::answerQuestion(*m_workplace, toCore(m_child), {}, question, answer);
}

Outcome Household::askFor(const ItemId &item)
{
    return usecase::askFor(*m_workplace, toCore(m_child), {}, item);
}

Outcome Household::moveRequest(const ItemId &item, box::RequestStep step)
{
    return usecase::moveRequest(*m_workplace, toCore(m_child), {}, item, step);
}

Outcome Household::countIn(const ItemId &item, int pieces)
{
    return usecase::countIn(*m_workplace, toCore(m_child), {}, item, pieces);
}

usecase::Tending Household::tending(const ItemId &item) const
{
    return {toCore(m_child), {}, item};
}

Outcome Household::noteGone(const ItemId &item, box::ExceptionKind kind, int pieces, Day day)
{
    return usecase::noteGone(*m_workplace, tending(item), kind, pieces, day);
}

Outcome Household::noteBackAgain(const ItemId &item, int pieces)
{
    return usecase::noteBackAgain(*m_workplace, tending(item), pieces);
}

Outcome Household::noteOpened(const ItemId &item, const box::PieceId &piece, std::optional<Day> day)
{
    return usecase::noteOpened(*m_workplace, tending(item), piece, day);
}

Outcome Household::noteLeftOpen(const ItemId &item, const box::PieceId &piece)
{
    return usecase::noteLeftOpen(*m_workplace, tending(item), piece);
}

Outcome Household::setKeepingLimit(const ItemId &item, std::optional<int> days)
{
    return usecase::setKeepingLimit(*m_workplace, tending(item), days);
}

Outcome Household::noteChecked(const ItemId &item)
{
    return usecase::noteChecked(*m_workplace, tending(item));
}

Outcome Household::noteHygiene(const ItemId &item, box::HygieneMark mark)
{
    return usecase::noteHygiene(*m_workplace, tending(item), mark);
}

Outcome Household::throwAway(const ItemId &item)
{
    return usecase::throwAway(*m_workplace, tending(item));
}

} // namespace lidlark::mobile
