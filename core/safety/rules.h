#pragma once

#include "core/safety/facts.h"
#include "core/safety/form.h"

/// The rules of the gate, one function a group. Each appends every reason it finds against one form
/// of an activity; none of them ever takes a reason away.
namespace lidlark::safety {

/// What may be shown at all, and what the therapist's yes was for. Source: activities.md 2.1.2.
void publicationRules(const Form &form, const Facts &facts, Refusal &refusal);

/// What is offered when the age or the allergies are not known. Source: activities.md 2.1.1.
void unknownRules(const Form &form, const Facts &facts, Refusal &refusal);

/// Floors of the entry and of its tags. Source: activities.md 2.1.3, 1.4.
void ageRules(const Form &form, const Facts &facts, Refusal &refusal);

/// Everyone in the room and in the home. Source: activities.md 1.4 (the two facts), 2.1.7;
/// safety.md SP-01, HM-01.
void companyRules(const Form &form, const Facts &facts, Refusal &refusal);

/// What anybody at home must avoid. Source: activities.md 1.4, LATEX, WHEAT; 1.3, foam (milk);
/// safety.md AL-01, LA-01, LA-02.
void householdRules(const Form &form, const Facts &facts, Refusal &refusal);

/// The therapist's flags, what this child likes, and quiet. Source: activities.md 1.4, TOUCH, SPIN,
/// BREATH, LIFT, STRAW, FOAM, SCENT, NOISE.
void flagRules(const Form &form, const Facts &facts, Refusal &refusal);

/// What the box and the home really hold. Source: activities.md 2.1.6.
void stockRules(const Form &form, const Facts &facts, Refusal &refusal);

/// How close an adult must be. Source: activities.md 2.1.5; safety.md SV-01, SV-02, SP-01.
void supervisionRules(const Form &form, const Facts &facts, Refusal &refusal);

/// The entry's own supervision, raised where the child, the room or the form asks for it.
catalogue::Supervision supervisionNeeded(const Form &form, const Facts &facts);

/// The items of an allowed form that will really be used, swaps in place of what they replace, with
/// what has to come home. Extras that are only nice are among them when they are there.
std::vector<catalogue::ItemUse> itemsUsed(const Form &form, const Facts &facts);

} // namespace lidlark::safety
