#include "mobile/bridge/play_in_hand.h"

namespace lidlark::mobile {

bool PlayInHand::nameExceptions(const ItemId &item, const box::Exceptions &exceptions)
{
    if (!m_progress)
        return false;
    std::vector<usecase::NamedException> named;
    for (std::size_t i = 0; i < box::exceptionKindCount; ++i) {
        const auto kind = static_cast<box::ExceptionKind>(i);
        if (exceptions.of(kind) > 0)
            named.push_back({item, kind, exceptions.of(kind)});
    }
    if (named.empty())
        named.push_back({item, box::ExceptionKind::UsedUp, 0});
    const Outcome done =
        usecase::nameExceptions(m_household->workplace(), m_progress->play, {}, named);
    if (!done)
        return report(done);
    mindTheFamily();
    emit changed();
    m_household->announce();
    return true;
}

std::map<ItemId, box::Exceptions> PlayInHand::exceptions() const
{
    std::map<ItemId, box::Exceptions> named;
    if (!m_progress)
        return named;
    const auto outcomes = store::BoxRepository(m_household->workplace().database).outcomes(m_box);
    if (!outcomes)
        return named;
    for (const store::OutcomeRow &outcome : *outcomes) {
        if (outcome.play == m_progress->play && !outcome.exceptions.allHome())
            named[outcome.item] = outcome.exceptions;
    }
    return named;
}

std::vector<usecase::HomeCount> PlayInHand::homeCounts() const
{
    return m_progress ? usecase::homeCounts(*m_progress, exceptions())
                      : std::vector<usecase::HomeCount>();
}

} // namespace lidlark::mobile
