#include "core/usecase/keep_box.h"
#include "mobile/bridge/household.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

Outcome Household::countBox(const std::map<ItemId, int> &counts)
{
    return usecase::countBox(*m_workplace, toCore(m_child), {}, counts);
}

Outcome Household::sayPlace(const std::string &place, const std::string &words)
{
    return usecase::sayPlace(*m_workplace, toCore(m_child), place, words);
}

usecase::FloorSearch Household::floorSearch()
{
    const auto known = family();
    if (known)
        return usecase::floorSearchOf(*known, *m_catalogue, today().day);
    usecase::FloorSearch search;
    search.smallOneLivesHere = true; // not knowing who lives here is reason enough to look
    return search;
}

Outcome Household::notePiecesFound(const usecase::FoundPieces &found)
{
    return usecase::notePiecesFound(*m_workplace, toCore(m_child), {}, found);
}

Outcome Household::checkFloor()
{
    return usecase::checkFloor(*m_workplace, toCore(m_child), {});
}

std::vector<usecase::TakeOut> Household::takeOuts()
{
    const auto known = family();
    if (!known)
        return {};
    auto takeOuts = usecase::takeOutsOf(*m_workplace, *known);
    return takeOuts ? *std::move(takeOuts) : std::vector<usecase::TakeOut>();
}

bool Household::somethingMustLeave()
{
    const auto takeOuts = this->takeOuts();
    return std::any_of(takeOuts.begin(), takeOuts.end(),
                       [](const usecase::TakeOut &takeOut) { return !takeOut.isDone(); });
}

Outcome Household::confirmTakenOut(const ItemId &item)
{
    return usecase::confirmTakenOut(*m_workplace, toCore(m_child), {}, item);
}

std::vector<usecase::BoxNote> Household::boxNotes()
{
    constexpr int historyDays = 366; // job.md D7, as activity history
    const auto known = family();
    if (!known)
        return {};
    auto notes = usecase::boxNotesOf(*m_workplace, *known, today().day - historyDays);
    return notes ? *std::move(notes) : std::vector<usecase::BoxNote>();
}

} // namespace lidlark::mobile
