#include "core/safety/rules.h"

namespace lidlark::safety {

void publicationRules(const Form &form, const Facts &facts, Refusal &refusal)
{
    const catalogue::Status status = form.activity->status;
    if (status == catalogue::Status::Draft || status == catalogue::Status::Withdrawn)
        refusal.push_back({.code = ReasonCode::NotPublished});
    const child::HomeSheet *home = facts.situation.home;
    if (home && home->reviewedOnly && status == catalogue::Status::AwaitingReview)
        refusal.push_back({.code = ReasonCode::NotReviewed});
    const auto lowered = facts.permissions.floors.find(form.activity->id);
    if (lowered != facts.permissions.floors.end() &&
        lowered->second.version < form.activity->version)
        refusal.push_back({.code = ReasonCode::PermissionOutdated});
}

} // namespace lidlark::safety
