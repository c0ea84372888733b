#pragma once

#include "core/workbench/handed.h"
#include "mobile/prints/print_language.h"

#include <map>
#include <string>

namespace lidlark::mobile {

/// What the items of a build are called on paper: as in the catalogue, else as their supplies are
/// kept, else by their ids.
class BuildItems
{
public:
    /// @param names of the supplies.
    BuildItems(PrintLanguage in, std::map<ItemId, std::string> names);

    /// "scissors", in the language of the page.
    [[nodiscard]] std::string nameOf(const ItemId &item, int pieces = 2) const;
    /// "scissors, for the left hand": for a sentence.
    [[nodiscard]] wording::Argument named(const ItemId &item) const;
    /// "Scissors, for the left hand". @param hand unsaid: as the item itself says.
    [[nodiscard]] QString title(const ItemId &item, int pieces = 2,
                                workbench::Hand hand = workbench::Hand::Unsaid) const;
    /// What the catalogue does not know is drawn as a box.
    [[nodiscard]] QString drawingOf(const ItemId &item) const;

private:
    PrintLanguage m_in;
    std::map<ItemId, std::string> m_names;
};

} // namespace lidlark::mobile
