#pragma once

#include "core/catalogue/catalogue.h"
#include "core/safety/facts.h"

#include <vector>

namespace lidlark::safety {

/// One line of an activity's items in one way of playing it.
struct Part {
    const catalogue::ItemUse *use = nullptr;
    const catalogue::ItemKind *kind = nullptr;     ///< What is used; null: not in the catalogue.
    const catalogue::ActivitySwap *swap = nullptr; ///< How `kind` stands in for the item of `use`.

    [[nodiscard]] bool swapped() const { return swap != nullptr; }
};

/// One way of playing an activity: each item itself, or one of the swaps the activity lists for it.
struct Form {
    const catalogue::Activity *activity = nullptr;
    std::vector<Part> parts;              ///< In the order of the activity's items.
    catalogue::TagSet tags;               ///< Cautions of this form.
    catalogue::TagSet tagsAsTheBoxStands; ///< Cautions of the form that the box itself suggests.
    int swaps = 0;                        ///< How many parts are swapped.
    int floorMonths = 0;                  ///< Of the activity, or more where a swap asks for it.
};

/// The form that the box and the home suggest: an item stays unless it is gone and a swap of it is
/// there (activities.md 1.3: the swap is what goes in the box instead).
Form formAsTheBoxStands(const catalogue::Activity &activity, const Facts &facts);

/// Every form of the activity, fewest swaps first, then in the order in which swaps are listed.
std::vector<Form> formsOf(const catalogue::Activity &activity, const Facts &facts);

/// The cautions of a form. Tags of the activity and of every item; when an item is swapped, its own
/// tags go, but only those that no other item of the form carries, that no piece made while playing
/// has and that do not come from what the body does; the swap's own tags come. Source:
/// activities.md 2.1.4 and 1.3, "A swap carries its own tags".
catalogue::TagSet cautionsOf(const Form &form, const catalogue::Catalogue &catalogue);

} // namespace lidlark::safety
