#include "mobile/bridge/shared_place.h"

#include "core/sync/kept_place.h"
#include "mobile/bridge/crew_storage.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

namespace {

/// Kept only where it can be used. @returns what bars it, nothing where it works.
Result<std::optional<wording::Sentence>> tryAndKeep(CrewDesk &desk, const sync::CrewPlace &place)
{
    const auto storage = storageFor(place);
    if (!storage)
        return storage.error();
    const auto bar = whatBars(**storage, desk.entropy());
    if (bar)
        return std::optional(*bar);
    if (const Outcome kept = sync::keepPlace(desk.database(), desk.keeper(), place); !kept)
        return kept.error();
    return std::optional<wording::Sentence>();
}

} // namespace

void SharedPlace::setCrew(CrewLife *crew)
{
    m_crew = crew;
    m_address = crew->place();
    emit changed();
}

void SharedPlace::tryOut()
{
    m_busy = true;
    say({}, false);
    m_crew->run<std::optional<wording::Sentence>>(
        this,
        [place = sync::CrewPlace{toCore(m_address.trimmed()), toCore(m_user.trimmed()),
                                 toCore(m_password)}](CrewDesk &desk) {
            return tryAndKeep(desk, place);
        },
        [this](const Result<std::optional<wording::Sentence>> &barred) {
            m_busy = false;
            m_crew->look();
            if (!barred)
                say(m_crew->household()->sentenceFor(barred.error()), false);
            else if (*barred)
                say(translated(**barred), false);
            else
                say(tr("It works. Lidlark can leave and fetch what the crew shares there."), true);
        });
}

void SharedPlace::forget()
{
    m_crew->run<Done>(
        this, [](CrewDesk &desk) { return sync::forgetPlace(desk.database(), desk.keeper()); },
        [this](const Outcome &gone) {
            m_address.clear();
            m_user.clear();
            m_password.clear();
            m_crew->look();
            say(gone ? QString() : m_crew->household()->sentenceFor(gone.error()), false);
        });
}

void SharedPlace::say(const QString &found, bool works)
{
    m_found = found;
    m_works = works;
    emit changed();
}

} // namespace lidlark::mobile
