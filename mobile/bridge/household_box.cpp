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

Outcome Household::noteFound(const ItemId &item, int pieces)
{
    return usecase::noteFound(*m_workplace, toCore(m_child), {}, item, pieces);
}

Outcome Household::checkFloor()
{
    return usecase::checkFloor(*m_workplace, toCore(m_child), {});
}

} // namespace lidlark::mobile
