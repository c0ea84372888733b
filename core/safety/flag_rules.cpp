#include "core/safety/rules.h"

namespace lidlark::safety {

using catalogue::Tag;

void flagRules(const Form &form, const Facts &facts, Refusal &refusal)
{
    const auto refuse = [&](Tag tag, bool applies, ReasonCode code) {
        if (applies && form.tags.has(tag))
            refusal.push_back({.code = code, .tag = tag});
    };
    const child::MedicalFlags &flags = facts.flags;
    const child::Permissions &allowed = facts.permissions;
    const child::HomeSheet *home = facts.situation.home;
    refuse(Tag::Touch, !home || home->likesTouch != child::Answer::Yes, ReasonCode::TouchNotLiked);
    refuse(Tag::Spin, flags.seizureShuntOrNeck && !allowed.spin, ReasonCode::NeedsTherapist);
    refuse(Tag::Breath, flags.heartLungOrShunt && !allowed.breath, ReasonCode::NeedsTherapist);
    refuse(Tag::Lift, flags.jointOrHeart && !allowed.lift, ReasonCode::NeedsTherapist);
    refuse(Tag::Straw, flags.mouthOrSwallowing && !allowed.straw, ReasonCode::NeedsTherapist);
    refuse(Tag::Foam, flags.brokenSkin, ReasonCode::BrokenSkin);
    refuse(Tag::Scent, flags.avoidScent, ReasonCode::ScentAvoided);
    refuse(Tag::Noise, facts.situation.room.quietNow || flags.soundSensitive, ReasonCode::QuietNow);
}

} // namespace lidlark::safety
