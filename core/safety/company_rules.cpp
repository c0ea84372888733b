#include "core/safety/rules.h"
#include "core/safety/tag_groups.h"

namespace lidlark::safety {

namespace {

using catalogue::Tag;
using catalogue::TagSet;

void refuseTags(TagSet tags, ReasonCode code, const std::vector<std::string> &who, Refusal &refusal)
{
    for (const Tag tag : tags.list())
        refusal.push_back({.code = code, .tag = tag, .name = joined(who)});
}

void roomRules(TagSet tags, const Company &room, bool besideSaid, Refusal &refusal)
{
    if (room.underThree)
        refuseTags(tags & notNearSmallOnes, ReasonCode::UnderThreeInRoom, room.underThreeNames,
                   refusal);
    if (room.mouther)
        refuseTags(tags & (notNearSmallOnes | notNearMouthers), ReasonCode::MoutherInRoom,
                   room.moutherNames, refusal);
    if (room.underThree && !besideSaid)
        refuseTags(tags & TagSet{Tag::Water}, ReasonCode::WaterUnderThree, room.underThreeNames,
                   refusal);
}

/// BALLOON: "hidden if an under-three or a mouther lives in the home, present or not".
void balloonRule(TagSet tags, const Company &home, Refusal &refusal)
{
    if (!home.underThree && !home.mouther)
        return;
    refuseTags(tags & TagSet{Tag::Balloon}, ReasonCode::SmallChildInHome,
               home.underThree ? home.underThreeNames : home.moutherNames, refusal);
}

/// HM-01: cups, bowls and tins that may stick over nose and mouth.
void hollowRule(const Form &form, const Company &room, Refusal &refusal)
{
    if (!room.underThree)
        return;
    for (const Part &part : form.parts) {
        if (part.kind && part.kind->hazards.sealsAFace)
            refusal.push_back({.code = ReasonCode::StiffHollow,
                               .item = part.kind->id,
                               .name = joined(room.underThreeNames)});
    }
}

/// SP-01: where another child of the home is small, small parts come in only under a condition that
/// the therapist has recorded ("asleep or out", high storage: job.md scenario 5).
void conditionRules(TagSet tags, const Facts &facts, Refusal &refusal)
{
    if (!facts.home.underThree && !facts.home.mouther)
        return;
    const TagSet small = tags & TagSet{Tag::Small, Tag::Coin};
    if (facts.permissions.smallWhenAway.empty())
        refuseTags(small, ReasonCode::SmallInHome, {}, refusal);
    if (!facts.situation.home || !facts.situation.home->highStorage)
        refuseTags(small, ReasonCode::NoHighPlace, {}, refusal);
}

/// A swap is no way round an open note while the small thing itself is still at hand: the floor is
/// searched first (activities.md 2.1.7; job.md scenario 5).
void floorNoteRules(const Form &form, const Facts &facts, Refusal &refusal)
{
    const BoxState &box = facts.situation.box;
    const TagSet tags = form.tags | form.tagsAsTheBoxStands;
    const bool smallOne =
        facts.room.underThree || facts.room.mouther || facts.home.underThree || facts.home.mouther;
    if (box.floorNoteOpen && smallOne)
        refuseTags(tags & TagSet{Tag::Small, Tag::Coin}, ReasonCode::FloorNoteOpen, {}, refusal);
    if (box.balloonNoteOpen)
        refuseTags(tags & TagSet{Tag::Balloon}, ReasonCode::FloorNoteOpen, {}, refusal);
}

} // namespace

void companyRules(const Form &form, const Facts &facts, Refusal &refusal)
{
    roomRules(form.tags, facts.room, facts.situation.room.besideSaid, refusal);
    hollowRule(form, facts.room, refusal);
    balloonRule(form.tags, facts.home, refusal);
    conditionRules(form.tags, facts, refusal);
    floorNoteRules(form, facts, refusal);
}

} // namespace lidlark::safety
