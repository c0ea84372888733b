#pragma once

#include "core/usecase/workplace.h"
#include "core/workbench/box_status.h"
#include "core/workbench/readiness.h"

#include <vector>

namespace lidlark::usecase {

/// A build as it lies on the packing table.
struct PackTable {
    workbench::KeptBuild build;
    std::vector<workbench::PackBox> boxes; ///< In the order of the build.
    std::vector<std::string> handedOver;   ///< Codes of those that were handed over as this build.

    [[nodiscard]] const workbench::PackBox *box(const std::string &code) const;
    [[nodiscard]] int ready() const;
    [[nodiscard]] bool isHandedOver(const std::string &code) const;
};

/// Errors: NotFound.
Result<PackTable> packTable(Workplace &therapist, const workbench::BuildId &build);

/// One line of one box of a build, and who stands at it.
struct PackLineAt {
    workbench::BuildId build;
    std::string box;
    ItemId item;
    std::string author = {}; ///< Empty: the phone's person.
};

/// "All of it lies in the box", with the lot that its supply has now. Said twice by one person it
/// is one word. @param hand as it is read off the thing, where that matters. Errors: NotAllowed,
/// NotFound (build, box, item), Invalid (no hand said, the other hand; the box was handed over, is
/// disputed or must not be packed as it is written).
Outcome packLine(Workplace &therapist, const PackLineAt &at,
                 workbench::Hand hand = workbench::Hand::Unsaid);

/// After all it does not lie there, or what lay there was not right: it is packed anew. The same
/// for something that is not on the list any more and was taken out. Errors: NotAllowed, NotFound,
/// Invalid (not packed; handed over).
Outcome unpackLine(Workplace &therapist, const PackLineAt &at);

/// A second person has looked at the line, and it is right.
/// Errors: NotAllowed, NotFound, Invalid (not packed, or packed by that very person; handed over).
Outcome lookOver(Workplace &therapist, const PackLineAt &at);

} // namespace lidlark::usecase
