#pragma once

#include "core/safety/admit.h"
#include "core/safety/room.h"

#include <optional>

namespace lidlark::safety {

/// A situation with all that is worked out once for the whole catalogue.
struct Facts {
    explicit Facts(const Situation &now);

    const Situation &situation;
    Company room;              ///< Whoever is here, the playing child included.
    Company home;              ///< Whoever lives here, here or not.
    std::optional<int> months; ///< The playing child's age, youngest possible.
    bool allergiesAnswered;    ///< Latex, wheat and coeliac each have a yes or a no.
    child::Answer milk;        ///< Somebody at home avoids milk.
    child::MedicalFlags flags; ///< Nothing where there is no home sheet.
    child::Permissions permissions;
};

/// Whether any use of the item is possible at all: a box item on the lid list with a piece left, a
/// household extra the home does not say it lacks.
bool isOnHand(const catalogue::ItemKind &kind, const Situation &situation);

/// The names joined for a reason: "Mirren, Tam".
std::string joined(const std::vector<std::string> &names);

} // namespace lidlark::safety
