#include "core/safety/admit.h"

#include "core/safety/gate.h"
#include "core/safety/rules.h"

namespace lidlark::safety {

Admission Gate::judge(const catalogue::Activity &activity) const
{
    const Form suggested = formAsTheBoxStands(activity, m_facts);
    Refusal refusal = reasonsAgainst(suggested);
    if (refusal.empty())
        return admitted(suggested);
    if (!activity.swaps.empty()) {
        for (const Form &form : formsOf(activity, m_facts)) {
            if (reasonsAgainst(form).empty())
                return admitted(form);
        }
    }
    return refusal;
}

Refusal Gate::reasonsAgainst(const Form &form) const
{
    Refusal refusal;
    for (const auto rules : {publicationRules, unknownRules, ageRules, companyRules, householdRules,
                             flagRules, supervisionRules, stockRules})
        rules(form, m_facts, refusal);
    return refusal;
}

Admitted Gate::admitted(const Form &form) const
{
    Admitted result;
    result.m_activity = form.activity;
    for (const Part &part : form.parts) {
        if (part.swapped())
            result.m_swaps.emplace(part.use->item, part.kind->id);
    }
    result.m_cautions = form.tags;
    result.m_supervision = supervisionNeeded(form, m_facts);
    result.m_items = itemsUsed(form, m_facts);
    return result;
}

Admission admit(const catalogue::Activity &activity, const Situation &situation)
{
    return Gate(situation).judge(activity);
}

Gated admitAll(const Situation &situation)
{
    const Gate gate(situation);
    Gated gated;
    for (const catalogue::Activity &activity : situation.catalogue.activities()) {
        Admission admission = gate.judge(activity);
        if (auto *admitted = std::get_if<Admitted>(&admission))
            gated.admitted.push_back(std::move(*admitted));
        else
            gated.heldBack.push_back({&activity, std::get<Refusal>(std::move(admission))});
    }
    return gated;
}

} // namespace lidlark::safety
