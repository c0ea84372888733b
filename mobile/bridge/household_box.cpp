#include "core/usecase/keep_box.h"
#include "mobile/bridge/household.h"
#include "mobile/bridge/text.h"

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
        return usecase::floorSearchOf(*known, m_catalogue, today().day);
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

} // namespace lidlark::mobile
