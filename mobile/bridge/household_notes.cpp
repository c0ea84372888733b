#include "core/usecase/our_way.h"
#include "core/usecase/take_back.h"
#include "mobile/bridge/household.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

std::vector<usecase::Noted> Household::notedToday()
{
    if (m_child.isEmpty())
        return {};
    auto noted = usecase::notedToday(*m_workplace, toCore(m_child));
    return noted ? *std::move(noted) : std::vector<usecase::Noted>();
}

Outcome Household::takeBack(const std::string &event)
{
    return usecase::takeBack(*m_workplace, {toCore(m_child), {}, event});
}

Outcome Household::putInAgain(const std::string &event)
{
    return usecase::putInAgain(*m_workplace, {toCore(m_child), {}, event});
}

bool Household::keepsOurWays() const
{
    return m_workplace && m_workplace->device.role != store::Role::Guest &&
           !m_workplace->device.home.empty();
}

QString Household::ourWay(const ActivityId &activity)
{
    const auto way = usecase::ourWayOf(*m_workplace, toCore(m_child), activity);
    return way && *way ? fromCore((*way)->words) : QString();
}

Outcome Household::keepOurWay(const ActivityId &activity, const std::string &words)
{
    return usecase::keepOurWay(*m_workplace, toCore(m_child), activity, words);
}

std::vector<play::OwnNote> Household::ownNotes()
{
    auto notes = usecase::ownNotes(*m_workplace, toCore(m_child));
    return notes ? *std::move(notes) : std::vector<play::OwnNote>();
}

Outcome Household::keepNote(const std::string &words)
{
    const auto kept = usecase::keepNote(*m_workplace, toCore(m_child), words);
    return kept ? Outcome(Done{}) : Outcome(kept.error());
}

Outcome Household::keepNote(play::NotePhrase phrase)
{
    const auto kept = usecase::keepNote(*m_workplace, toCore(m_child), phrase);
    return kept ? Outcome(Done{}) : Outcome(kept.error());
}

Outcome Household::removeNote(const std::string &id)
{
    return usecase::removeNote(*m_workplace, toCore(m_child), id);
}

Outcome Household::chooseToSend(const std::string &id, bool send)
{
    return usecase::chooseToSend(*m_workplace, toCore(m_child), id, send);
}

} // namespace lidlark::mobile
