#include "mobile/bridge/crew_desk.h"

#include "core/crew/clinic_crew.h"
#include "core/store/box_repository.h"
#include "core/sync/sync_words.h"
#include "mobile/bridge/crew_keeper.h"

namespace lidlark::mobile {

Result<std::unique_ptr<CrewDesk>> CrewDesk::open(const CrewDeskPlace &place, sync::GoOn goOn)
{
    auto database = store::Database::openExisting(place.store);
    if (!database)
        return database.error();
    auto keeper = keeperFor(*database, place.keychain);
    if (!keeper)
        return keeper.error();
    auto chance = place.chance ? place.chance : std::make_shared<SystemEntropy>();
    return std::unique_ptr<CrewDesk>(new CrewDesk(*std::move(database), *place.clock,
                                                  std::move(chance), *std::move(keeper),
                                                  std::move(goOn)));
}

Result<sync::Post> CrewDesk::post()
{
    auto opened = sync::openPost(m_database, m_clock, *m_entropy, *m_keeper);
    if (!opened)
        return opened.error();
    if (opened->match != sync::Match::Well)
        return Error{ErrorCode::NotAllowed, "member"};
    return opened->post;
}

Result<StorageOrWhy> CrewDesk::storage()
{
    const auto place = sync::placeIn(m_database, *m_keeper);
    if (!place)
        return place.error();
    if (!*place)
        return StorageOrWhy(sync::noPlaceSentence());
    return storageFor(**place);
}

Result<std::string> CrewDesk::crewOf(const Whose &whose)
{
    return crewIdOf(m_database, whose);
}

Result<std::string> crewIdOf(store::Database &database, const Whose &whose)
{
    if (whose.clinics)
        return std::string(crew::clinicCrew);
    const auto box = store::BoxRepository(database).boxOf(whose.child);
    return box ? Result<std::string>(box->id.value) : Result<std::string>(box.error());
}

} // namespace lidlark::mobile
