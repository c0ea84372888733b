#include "core/usecase/share_plays.h"

#include "core/store/box_repository.h"
#include "core/store/crew_repository.h"
#include "core/store/shared_copies.h"

#include <algorithm>
#include <set>

namespace lidlark::usecase {

namespace {

using journal::Kind;
using journal::LaneKind;

Result<std::vector<std::string>> therapistsOf(Workplace &workplace, const BoxId &box)
{
    const auto crew = store::CrewRepository(workplace.database).crewOf(box.value);
    if (!crew)
        return crew.error();
    std::set<std::string> names;
    for (const crew::Member &member : crew->present()) {
        if (member.role == store::Role::Therapist)
            names.insert(member.person);
    }
    return std::vector<std::string>(names.begin(), names.end());
}

play::CopyKey freshCopyKey(Entropy &entropy)
{
    std::array<std::uint8_t, play::CopyKey::size> bytes{};
    const auto first = entropy.sixteenBytes();
    const auto second = entropy.sixteenBytes();
    std::ranges::copy(first, bytes.begin());
    std::ranges::copy(second, bytes.begin() + first.size());
    return play::CopyKey(bytes);
}

} // namespace

Result<std::optional<PlaySharing>> playSharing(Workplace &workplace, const std::string &childAlias)
{
    const auto box = store::BoxRepository(workplace.database).boxOf(childAlias);
    if (!box)
        return box.error();
    const store::Device &device = workplace.device;
    const auto with = therapistsOf(workplace, box->id);
    if (!with)
        return with.error();
    if (device.role != store::Role::Parent || device.home.empty() || with->empty())
        return std::optional<PlaySharing>();
    const auto said = store::sharingIn(workplace.database, device.home, box->child);
    if (!said)
        return said.error();
    PlaySharing sharing{*with, false, {}, std::nullopt};
    if (*said) {
        sharing.shares = (*said)->yes;
        sharing.by = (*said)->author;
        sharing.day = (*said)->day;
    }
    return std::optional(sharing);
}

Outcome sharePlays(Workplace &workplace, const std::string &childAlias, bool yes)
{
    const auto sharing = playSharing(workplace, childAlias);
    const auto box = store::BoxRepository(workplace.database).boxOf(childAlias);
    if (!sharing || !box)
        return sharing ? box.error() : sharing.error();
    if (!*sharing)
        return Error{ErrorCode::NotAllowed, "share plays"};
    if ((*sharing)->shares == yes && (*sharing)->day)
        return Done{};
    auto recording = store::Recording::begin(workplace.database, workplace.device, workplace.clock);
    if (!recording)
        return recording.error();
    const std::string fields =
        yes ? play::fieldsOfSharing(box->child, freshCopyKey(workplace.entropy))
            : play::fieldsOfNotSharing(box->child);
    Outcome said =
        recording->say({LaneKind::Home, workplace.device.home.value}, Kind::Sharing, fields);
    return said ? commitWithCopies(workplace, *recording) : said;
}

Outcome commitWithCopies(Workplace &workplace, store::Recording &recording)
{
    const auto kept =
        store::keepCopies(recording, workplace.database, workplace.device, workplace.clock);
    return kept ? recording.commit() : Outcome(kept.error());
}

} // namespace lidlark::usecase
