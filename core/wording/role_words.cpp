#include "core/wording/role_words.h"

namespace lidlark::wording {

Sentence roleWord(crew::Role role)
{
    switch (role) {
    case crew::Role::Parent:
        return {say("Parent"), {}};
    case crew::Role::Caregiver:
        return {say("Family or carer"), {}};
    case crew::Role::Guest:
        return {say("Guest for a few days"), {}};
    case crew::Role::Therapist:
        break;
    }
    return {say("Therapist"), {}};
}

Sentence whatRoleSees(crew::Role role)
{
    switch (role) {
    case crew::Role::Parent:
        return {say("Sees the box, the home sheet, the plays, the kites and the goals. Lets others "
                    "in."),
                {}};
    case crew::Role::Caregiver:
        return {say("Sees the box, the home sheet, the plays and the kites. No goals."), {}};
    case crew::Role::Guest:
        return {say("Sees the box and the home sheet. No plays of others, no kites, no goals."),
                {}};
    case crew::Role::Therapist:
        break;
    }
    return {say("Sees the box, the home sheet and the goals. No plays, no kites."), {}};
}

} // namespace lidlark::wording
