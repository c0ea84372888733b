#include "mobile/bridge/shared_place.h"

#include "core/sync/kept_place.h"
#include "mobile/bridge/crew_storage.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

namespace {

/// What a trial came to.
struct Trial {
    bool works = false;
    wording::Sentence found;
};

/// Kept only where it can be used.
Result<Trial> tryAndKeep(CrewDesk &desk, const sync::CrewPlace &typed)
{
    const sync::CrewPlace place = tidied(typed);
    const StorageOrWhy storage = storageFor(place);
    if (const auto *why = std::get_if<wording::Sentence>(&storage))
        return Trial{false, *why};
    const auto [works, found] =
        triedOut(*std::get<std::unique_ptr<sync::Storage>>(storage), desk.entropy());
    if (works) {
        if (const Outcome kept = sync::keepPlace(desk.database(), desk.keeper(), place); !kept)
            return kept.error();
    }
    return Trial{works, found};
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
    m_crew->run<Trial>(
        this,
        [place = sync::CrewPlace{toCore(m_address.trimmed()), toCore(m_user.trimmed()),
                                 toCore(m_password)}](CrewDesk &desk) {
            return tryAndKeep(desk, place);
        },
        [this](const Result<Trial> &trial) {
            m_busy = false;
            m_crew->look();
            if (trial && trial->works)
                m_address = m_crew->place(); // as it is kept
            if (trial)
                say(translated(trial->found), trial->works);
            else
                say(m_crew->household()->sentenceFor(trial.error()), false);
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
    const bool turned = works != m_works;
    m_found = found;
    m_works = works;
    emit changed();
    if (turned)
        emit worksChanged();
}

} // namespace lidlark::mobile
