#include "core/usecase/issue_box.h"

#include "core/box/box_events.h"
#include "core/box/piece_events.h"
#include "core/box/place.h"
#include "core/store/clinic_rows.h"
#include "core/store/recording.h"
#include "core/usecase/box_to_hand_over.h"
#include "core/usecase/demo_phone.h"
#include "core/usecase/packs_for_another.h"

#include <nlohmann/json.hpp>

namespace lidlark::usecase {

namespace {

using child::Fact;
using journal::Kind;
using journal::Lane;
using journal::LaneKind;

std::vector<Fact> factsOf(const island::Resident &resident)
{
    const std::string id = "p-" + demoId(resident.alias);
    std::vector<Fact> facts{{id, "alias", resident.alias},
                            {id, "kind", std::string(child::personKindNames.of(resident.kind))},
                            {id, "lives", resident.visits ? "visits" : "yes"}};
    if (resident.kind == child::PersonKind::Child) {
        const child::Age age = child::ageFromMonths(resident.monthsOnDayOne, island::dayOne());
        facts.push_back({id, "born-by", toText(age.latestBirth)});
        if (resident.mouths != child::Answer::Unanswered)
            facts.push_back({id, "mouths", std::string(child::answerNames.of(resident.mouths))});
    }
    return facts;
}

/// The playing child stands on the sheet of each home, under the child's own id.
std::vector<Fact> factsOfChild(const island::Family &family)
{
    const std::string id = "c-" + demoId(family.child);
    const child::Age age = child::ageFromMonths(family.monthsOnDayOne, island::dayOne());
    std::vector<Fact> facts{{id, "alias", family.child},
                            {id, "kind", "child"},
                            {id, "lives", "yes"},
                            {id, "born-by", toText(age.latestBirth)},
                            {id, "mouths", "no"}};
    if (family.energyLimited)
        facts.push_back({id, "energy-limited", "yes"});
    return facts;
}

Outcome writeHome(store::Recording &recording, const island::Family &family,
                  const island::Home &home)
{
    const Lane safety{LaneKind::Safety, home.id};
    std::vector<Fact> facts = factsOfChild(family);
    facts.push_back({"", "name", home.name});
    facts.insert(facts.end(), home.facts.begin(), home.facts.end());
    for (const island::Resident &resident : home.residents) {
        const std::vector<Fact> theirs = factsOf(resident);
        facts.insert(facts.end(), theirs.begin(), theirs.end());
    }
    // Said by the parent at the hand-over, written on the therapist's phone: it is the parent who
    // can correct it (events.md 8.2).
    const std::string &parent = home.phones.front().person;
    for (const Fact &fact : facts) {
        Outcome done = recording.sayAs(parent, safety, Kind::Fact, child::fieldsOf(fact));
        if (!done)
            return done;
    }
    for (const child::Permission &permission : home.permissions) {
        Outcome done = recording.say(safety, Kind::Permission, child::fieldsOf(permission, true));
        if (!done)
            return done;
    }
    return Done{};
}

Outcome writeBox(store::Recording &recording, const island::Family &family)
{
    const Lane box{LaneKind::Box, "b-" + demoId(family.child)};
    const nlohmann::json who{{"child", "c-" + demoId(family.child)}, {"alias", family.child}};
    const box::Opened opened{{"dough"}, box::pieceId(std::nullopt, 0), island::issueDay()};
    std::vector<std::pair<Kind, std::string>> sayings{
        {Kind::Child, who.dump()},
        {Kind::Revision, box::fieldsOf(box::Revision{1, family.packed, {}})}};
    if (!family.homes.empty())
        sayings.emplace_back(Kind::Place, box::fieldsOfPlace(family.homes.front().id,
                                                             "at " + family.homes.front().name));
    if (!family.homes.empty() && family.packed.contains({"dough"}))
        sayings.emplace_back(Kind::Opened,
                             box::fieldsOf(opened)); // tried together at the hand-over
    for (const auto &[kind, fields] : sayings) {
        if (Outcome done = recording.say(box, kind, fields); !done)
            return done;
    }
    return Done{};
}

/// The first box of a child: ids by chance, since boxes of all therapists meet on one storage. Who
/// lives with the child, and where the box is, their own phone says.
Outcome writeFirstBox(store::Recording &recording, Entropy &entropy, const BoxToHandOver &packed)
{
    const Lane box{LaneKind::Box, entropy.freshId()};
    const nlohmann::json who{{"child", entropy.freshId()}, {"alias", packed.status.to}};
    if (Outcome done = recording.say(box, Kind::Child, who.dump()); !done)
        return done;
    return recording.say(box, Kind::Revision, box::fieldsOf(box::Revision{1, packed.lidList, {}}));
}

/// Another box for a child who has one: what lies in it is what was packed, whatever was counted of
/// the one before, and what only that one held is out of the house with it.
Outcome writeNextBox(store::Recording &recording, const LidListBefore &before,
                     const std::map<ItemId, int> &packed)
{
    const Lane lane{LaneKind::Box, before.box.value};
    std::vector<std::pair<Kind, std::string>> sayings{
        {Kind::Revision, box::fieldsOf(box::Revision{before.number + 1, packed, {}})}};
    for (const ItemId &item : before.items) {
        if (!packed.contains(item))
            sayings.emplace_back(Kind::TakenOut, box::fieldsOf(box::TakenOut{item, "revision"}));
    }
    for (const auto &[item, pieces] : packed)
        sayings.emplace_back(Kind::Count, box::fieldsOf(box::Counted{item, pieces, 0}));
    for (const auto &[kind, fields] : sayings) {
        if (Outcome done = recording.say(lane, kind, fields); !done)
            return done;
    }
    return Done{};
}

Outcome writeAll(store::Recording &recording, const island::Family &family)
{
    if (Outcome done = writeBox(recording, family); !done)
        return done;
    for (const island::Home &home : family.homes) {
        if (Outcome done = writeHome(recording, family, home); !done)
            return done;
    }
    for (const child::Goal &goal : family.goals) {
        const child::ChildGoal childGoal{{"c-" + demoId(family.child)}, goal};
        Outcome done = recording.say({LaneKind::Goals, "b-" + demoId(family.child)}, Kind::Goal,
                                     child::fieldsOf(childGoal));
        if (!done)
            return done;
    }
    return Done{};
}

} // namespace

Outcome issueBox(Workplace &therapist, const island::Family &family)
{
    Result<store::Recording> recording =
        store::Recording::begin(therapist.database, therapist.device, therapist.clock);
    if (!recording)
        return recording.error();
    if (Outcome done = writeAll(*recording, family); !done)
        return done;
    return recording->commit();
}

Outcome issuePackedBox(Workplace &therapist, const workbench::BuildId &build,
                       const std::string &code)
{
    const auto packed = boxToHandOver(therapist, build, code);
    if (!packed)
        return packed.error();
    const auto before = lidListBefore(therapist, packed->status.to);
    const auto packsOnly = packsForAnother(therapist);
    if (!before || !packsOnly)
        return before ? packsOnly.error() : before.error();
    if (!*before && *packsOnly)
        return Error{ErrorCode::NotAllowed, "hand-over"};
    Result<store::Recording> recording =
        store::Recording::begin(therapist.database, therapist.device, therapist.clock);
    if (!recording)
        return recording.error();
    Outcome written = *before ? writeNextBox(*recording, **before, packed->lidList)
                              : writeFirstBox(*recording, therapist.entropy, *packed);
    if (!written)
        return written;
    if (Outcome done =
            recording->say(store::clinicLane, Kind::BoxStatus, workbench::fieldsOf(packed->status));
        !done)
        return done;
    return recording->commit();
}

} // namespace lidlark::usecase
