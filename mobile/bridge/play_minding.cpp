#include "core/usecase/box_items.h"
#include "core/usecase/tend_item.h"
#include "core/wording/catalogue_terms.h"
#include "core/wording/closing_words.h"
#include "core/wording/freshness_words.h"
#include "mobile/bridge/play_in_hand.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

void PlayInHand::mindTheFamily()
{
    m_countFirst.clear();
    m_outOfReach.clear();
    m_lookFirst.clear();
    m_toLookOver.clear();
    if (!m_progress)
        return;
    const auto family = m_household->family();
    if (!family)
        return;
    mindTheCounting(*family);
    const Day today = m_household->today().day;
    const usecase::SmallOthers small = usecase::smallOthersOf(*family, today);
    if (small.any)
        m_outOfReach = safetyText(wording::outOfReach(small.names));
    for (const catalogue::ItemKind *kind :
         usecase::toLookOver(*family, m_household->catalogue(), m_progress->items, today)) {
        // A look before every use is not written down: the box lane would tell the other home how
        // often was played (events.md 4).
        if (kind->life.checkDays)
            m_toLookOver.push_back(kind->id);
        m_lookFirst.append(
            safetyText(wording::lookFirstWords(wording::nameOf(*kind), wording::checkOf(*kind))));
    }
}

bool PlayInHand::lookedOver()
{
    for (const ItemId &item : m_toLookOver) {
        const usecase::Tending tending{toCore(m_household->child()), {}, item};
        if (!report(usecase::noteChecked(m_household->workplace(), tending)))
            return false;
    }
    m_lookFirst.clear();
    m_toLookOver.clear();
    emit changed();
    return true;
}

void PlayInHand::mindTheCounting(const usecase::Family &family)
{
    const catalogue::Catalogue &catalogue = m_household->catalogue();
    const auto due =
        usecase::stillToCount(family, catalogue, *m_progress,
                              usecase::namedOf(family, m_progress->play), m_household->today().day);
    if (due.empty())
        return;
    const catalogue::ItemKind *kind = catalogue.item(due.front().item);
    m_countFirst = safetyText(wording::countHomeFirst(
        kind != nullptr ? wording::nameOf(*kind) : wording::Argument(due.front().item.value),
        due.front().home, due.front().due));
}

} // namespace lidlark::mobile
