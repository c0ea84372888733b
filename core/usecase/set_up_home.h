#pragma once

#include "core/child/home_facts.h"
#include "core/store/device_repository.h"
#include "core/usecase/workplace.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace lidlark::usecase {

/// The three questions of the first run: whose box, how old, who else is at home and what must be
/// kept away. No account.
struct FirstAnswers {
    std::string childAlias;
    std::optional<child::Age> age;
    std::string adultAlias;
    struct OtherChild {
        std::string alias;
        std::optional<child::Age> age;
        child::Answer mouths = child::Answer::Unanswered;
    };
    std::vector<OtherChild> otherChildren;
    child::Answer latex = child::Answer::Unanswered;
    child::Answer wheat = child::Answer::Unanswered; ///< Wheat allergy or coeliac disease.
    std::map<ItemId, int> lidList;                   ///< What lies in the box.
};

/// Makes this store a family's own: device, home sheet, child and box, in one transaction.
/// Errors: Invalid (an empty or over-long alias), BeforeBirth (a birth in the future).
Result<store::Device> setUpHome(Workplace &workplace, const FirstAnswers &answers);

/// Whether a phone that came in by a code is of a home of which nobody has said who lives there:
/// the box was handed over by a therapist whose phone knows no home of the child. False where
/// another phone of the same home is in the crew: what that one says may still be on its way.
Result<bool> isHomeToBeTold(Workplace &workplace, const std::string &child);

/// The first answers about such a home, on its home sheet, for a child whose box is here; what must
/// stay away and lies in the box is asked to be swapped. In one transaction.
/// @param answers names and the lid list are passed over: they are known.
/// Errors: NotFound, Invalid, BeforeBirth.
Outcome tellHome(Workplace &workplace, const std::string &child, FirstAnswers answers);

/// One statement on the home sheet, in the phone's person's name (say_statement.h). Errors: Invalid
/// with the fact named (child::problemWith).
Outcome sayFact(Workplace &workplace, const HomeId &home, const child::Fact &fact);

} // namespace lidlark::usecase
