#pragma once

#include "core/base/id.h"
#include "core/catalogue/life.h"
#include "core/catalogue/measured_hazards.h"
#include "core/catalogue/tag.h"
#include "core/catalogue/words_origin.h"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace lidlark::catalogue {

enum class Source { Box, Home };
inline constexpr EnumNames<Source, 2> sourceNames{{"box", "home"}};

enum class ComesBack { Yes, Counted, PartUsed, UsedUp };
inline constexpr EnumNames<ComesBack, 4> comesBackNames{{"yes", "counted", "part-used", "used-up"}};

/// What goes into the box instead; once chosen, the original is never offered.
struct ItemSwap {
    ItemId with;
    std::string note;
    bool operator==(const ItemSwap &) const = default;
};

/// A kind of thing that lies in a box or a household (activities.md 1.3).
struct ItemKind {
    ItemId id;
    int version = 1;
    std::string name; ///< As on the lid list, lower case: "stick-on eyes".
    std::string one;  ///< One of them: "stick-on eye".
    Source source = Source::Box;
    int lidCount = 0; ///< Pieces in a standard box; 0 for swaps and household extras.
    ComesBack comesBack = ComesBack::Yes;
    TagSet tags; ///< Never less than the measures say.
    std::optional<ItemSwap> swap;
    std::vector<std::string> allergens;
    Measures measures;
    MeasuredHazards hazards; ///< What the measures say; the loader sets it.
    bool divides = false;    ///< Cut, torn, pinched or pressed into pieces: paper, foil, dough.
    bool seatedOnly = false; ///< Sharp or pointed, or in a mouth: never walked about with.
    /// It can be washed with soap, rinsed and dried. What cannot is thrown away once it was in a
    /// mouth, or stays with one child (safety.md HY-01).
    bool cleanable = false;
    bool singleChild = false; ///< Never issued again to another child (job.md T8).
    std::vector<std::string> care;
    Life life;
    std::optional<UsePrior> use; ///< Every box item has one; nobody counts what a home lends.
    std::string drawing;
    std::string alt;
    WordsOrigin wordsOrigin = WordsOrigin::Ours;
    /// The item in English, where its words are a translation; null: they are English.
    std::shared_ptr<const ItemKind> inEnglish = nullptr;

    /// It goes off, dries out or wears out from being opened on, so opening it is written down.
    [[nodiscard]] bool isPerishable() const
    {
        return life.openedDays || life.openAirDays || !life.rescue.empty();
    }
};

} // namespace lidlark::catalogue
