#include "core/usecase/search_floor.h"

#include "core/box/box_events.h"
#include "core/safety/room.h"
#include "core/store/event_repository.h"
#include "core/store/recording.h"

#include <algorithm>

namespace lidlark::usecase {

namespace {

using box::ExceptionKind;
using catalogue::Tag;
using journal::Kind;
using journal::Lane;
using journal::LaneKind;

const MissingItem *missingIn(const FloorSearch &search, const ItemId &item)
{
    const auto found =
        std::find_if(search.missing.begin(), search.missing.end(),
                     [&item](const MissingItem &entry) { return entry.item == item; });
    return found == search.missing.end() ? nullptr : &*found;
}

std::optional<Error> problemWith(const FloorSearch &search, const FoundPieces &found)
{
    if (found.empty())
        return Error{ErrorCode::Invalid, "found: nothing named"};
    for (const auto &[item, pieces] : found) {
        const MissingItem *missing = missingIn(search, item);
        if (missing == nullptr)
            return Error{ErrorCode::Invalid, item.value + ": not missing"};
        if (pieces < 1 || pieces > missing->pieces)
            return Error{ErrorCode::Invalid, item.value + ": more than is missing, or none"};
        if (missing->danger == FloorDanger::BalloonPiece && pieces != missing->pieces)
            return Error{ErrorCode::Invalid, item.value + ": some pieces are still missing"};
    }
    return std::nullopt;
}

/// What is written once a balloon's pieces are all there: the play's own register says "used up"
/// instead of "lost"; a loss that no play opened is closed, and its balloon stays gone.
Outcome closeBalloon(store::Recording &recording, const std::string &author, const Lane &lane,
                     const std::vector<journal::Event> &events, const store::LossRow &loss)
{
    const auto opened = std::find_if(events.begin(), events.end(), [&loss](const auto &event) {
        return journal::identityOf(event) == loss.identity;
    });
    auto outcome = opened == events.end() ? std::nullopt : box::readOutcome(*opened);
    if (!outcome)
        return recording.sayAs(author, lane, Kind::FloorChecked,
                               box::fieldsOf(box::FloorChecked{loss.item, loss.identity}));
    box::Exceptions &value = outcome->exceptions;
    value.set(ExceptionKind::UsedUp,
              value.of(ExceptionKind::UsedUp) + value.of(ExceptionKind::Lost));
    value.set(ExceptionKind::Lost, 0);
    return recording.sayAs(author, lane, Kind::Outcome, box::fieldsOf(*outcome));
}

Outcome closeBalloons(Workplace &workplace, store::Recording &recording, const std::string &author,
                      const Family &family, const ItemId &item)
{
    const Lane lane{LaneKind::Box, family.box.id.value};
    const auto events =
        store::EventRepository(workplace.database).standingOfSubject({lane, "item:" + item.value});
    if (!events)
        return events.error();
    for (const store::LossRow &loss : family.losses) {
        if (loss.item != item)
            continue;
        if (Outcome said = closeBalloon(recording, author, lane, *events, loss); !said)
            return said;
    }
    return Done{};
}

} // namespace

FloorDanger floorDangerOf(const catalogue::ItemKind *kind)
{
    if (kind == nullptr)
        return FloorDanger::SmallPart;
    if (kind->tags.has(Tag::Balloon))
        return FloorDanger::BalloonPiece;
    const bool small = kind->tags.has(Tag::Small) || kind->tags.has(Tag::Coin);
    return small ? FloorDanger::SmallPart : FloorDanger::None;
}

bool FloorSearch::balloon() const
{
    return std::any_of(missing.begin(), missing.end(), [](const MissingItem &entry) {
        return entry.danger == FloorDanger::BalloonPiece;
    });
}

bool FloorSearch::isUrgent() const
{
    return balloon() || (!missing.empty() && smallOneLivesHere);
}

FloorSearch floorSearchOf(const Family &family, const catalogue::Catalogue &catalogue, Day today)
{
    FloorSearch search;
    for (const store::LossRow &loss : family.losses) {
        const FloorDanger danger = floorDangerOf(catalogue.item(loss.item));
        if (danger == FloorDanger::None)
            continue;
        const auto known =
            std::find_if(search.missing.begin(), search.missing.end(),
                         [&loss](const MissingItem &entry) { return entry.item == loss.item; });
        if (known == search.missing.end())
            search.missing.push_back({loss.item, danger, loss.pieces});
        else
            known->pieces += loss.pieces;
    }
    const child::HomeSheet *home = family.sheet ? &*family.sheet : nullptr;
    const safety::Company company = safety::companyOfHome(home, family.child, today);
    search.smallOneLivesHere = company.underThree || company.mouther;
    search.smallOnes = company.underThreeNames;
    for (const std::string &name : company.moutherNames) {
        if (std::find(search.smallOnes.begin(), search.smallOnes.end(), name) ==
            search.smallOnes.end())
            search.smallOnes.push_back(name);
    }
    return search;
}

Outcome notePiecesFound(Workplace &workplace, const std::string &childAlias,
                        const std::string &author, const FoundPieces &found)
{
    const Result<Family> family = loadFamily(workplace, childAlias);
    const Result<DayPart> today = store::todayOf(workplace.clock);
    if (!family || !today)
        return family ? today.error() : family.error();
    const FloorSearch search = floorSearchOf(*family, workplace.catalogue, today->day);
    if (const auto problem = problemWith(search, found))
        return *problem;
    Result<store::Recording> recording =
        store::Recording::begin(workplace.database, workplace.device, workplace.clock);
    if (!recording)
        return recording.error();
    const std::string who = author.empty() ? workplace.device.person : author;
    for (const auto &[item, pieces] : found) {
        Outcome said = missingIn(search, item)->danger == FloorDanger::BalloonPiece
                           ? closeBalloons(workplace, *recording, who, *family, item)
                           : recording->sayAs(who, {LaneKind::Box, family->box.id.value},
                                              Kind::Found, box::fieldsOf(box::Found{item, pieces}));
        if (!said)
            return said;
    }
    return recording->commit();
}

} // namespace lidlark::usecase
