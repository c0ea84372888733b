#include "core/sync/share.h"

#include "core/store/crew_repository.h"
#include "core/sync/crew_book.h"
#include "core/sync/invite.h"

#include <algorithm>

namespace lidlark::sync {

namespace {

bool isAlone(const crew::Crew &crew, const DeviceId &own)
{
    return crew.has(own) && std::ranges::all_of(crew.present(), [&own](const crew::Member &member) {
               return member.device == own || member.paper;
           });
}

/// What a phone by itself had shared before its store was set back.
Result<Match> catchUp(Post &post, const std::map<std::string, crew::Crew> &crews, Storage &storage)
{
    const bool alone = std::ranges::all_of(
        crews, [&post](const auto &entry) { return isAlone(entry.second, post.device.id); });
    if (!alone)
        return Match::Restored;
    for (const auto &[box, crew] : crews) {
        const auto report = takeOwnIn(post, box, storage);
        if (!report)
            return report.error();
        if (report->trouble || !report->findings.empty())
            return Match::Restored;
    }
    return Match::Well;
}

} // namespace

Result<Opened> openPost(store::Database &database, const Clock &clock, Entropy &entropy,
                        SecretKeeper &keeper)
{
    const auto device = store::DeviceRepository(database).device();
    if (!device)
        return device.error();
    if (!*device)
        return Error{ErrorCode::NotFound, "a household in this store"};
    const auto own = ownSecret(database, (*device)->id, keeper, entropy);
    if (!own)
        return own.error();
    return Opened{{database, clock, entropy, **device, own->secret}, own->match};
}

Result<Shared> shareAll(Post &post, Match match, SecretKeeper &keeper, Storage &storage,
                        const GoOn &goOn)
{
    const auto crews = store::CrewRepository(post.database).all();
    if (!crews)
        return crews.error();
    Shared shared{match, {}};
    if (match == Match::Restored) {
        const auto caughtUp = catchUp(post, *crews, storage);
        if (!caughtUp)
            return caughtUp.error();
        shared.match = *caughtUp;
    }
    if (shared.match != Match::Well)
        return shared;
    if (const Outcome moved = moveMarkOn(post.database, post.device.id, keeper); !moved)
        return moved.error();
    for (const auto &[box, crew] : *crews) {
        auto report = exchange(post, box, storage, goOn);
        if (!report)
            return report.error();
        // After the exchange: what a newcomer needs lies there before it is told to come in.
        const auto welcomed = bringWelcome(post, box, storage);
        if (!welcomed)
            return welcomed.error();
        shared.boxes.emplace(box, *std::move(report));
    }
    return shared;
}

} // namespace lidlark::sync
