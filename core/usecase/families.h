#pragma once

#include "core/catalogue/catalogue.h"
#include "core/store/family_folder.h"
#include "core/usecase/set_up_home.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace lidlark::usecase {

/// One store of the phone, looked into. A store is a world of its own: only names are read here.
struct FamilyOnPhone {
    std::string file;
    std::string homeName; ///< Empty: nobody has named it.
    std::string person;   ///< Who writes there.
    std::vector<std::string> children;
    std::vector<std::string> people; ///< Everybody on the home sheet.
    std::optional<Error>
        problem; ///< Torn, foreign, of a newer Lidlark: then nothing else is known.
};

/// A child with a box on this phone, and what tells it from another of the same alias.
struct ChildOnPhone {
    std::string alias;
    std::string file;
    std::string homeName; ///< Said where the alias is not enough and the home's name is.
    std::string person;   ///< Who writes there: said where neither is enough.
    int number = 0;       ///< Counted from 1 where not even that is enough; else 0.
    bool operator==(const ChildOnPhone &) const = default;
};

/// Every store of the phone that holds a family, or cannot be read. One that was never set up is
/// none; a file that cannot be read is left as it is and keeps nobody else from theirs.
std::vector<FamilyOnPhone> familiesIn(const store::FamilyFolder &folder);

std::vector<ChildOnPhone> childrenOf(std::span<const FamilyOnPhone> families);

/// Everybody's alias: what no reminder may say.
std::vector<std::string> namesIn(std::span<const FamilyOnPhone> families);

/// Sets up a further family in a store of its own, whole or not at all (set_up_home.h).
/// @returns its file.
Result<std::string> addFamily(store::FamilyFolder &folder, const catalogue::Catalogue &catalogue,
                              const Clock &clock, Entropy &entropy, const FirstAnswers &answers);

/// Takes a family off the phone; its store must be closed. It can be brought back until it is
/// forgotten (family_folder.h). What the phone keeps for itself stays in a first store.
/// @returns where it lies now.
Result<std::string> takeFamilyOff(store::FamilyFolder &folder, const std::string &file);

/// What the other families of the phone have kept for long enough goes as well, though nobody looks
/// at them (keep_limits.h). @param onTable the file that is open, with its workplace.
void keepLimitsElsewhere(const store::FamilyFolder &folder, const std::string &onTable,
                         const Workplace &workplace);

/// Whether anybody on the phone has played on @p day. A store that cannot be read says nothing.
bool playedOnPhone(const store::FamilyFolder &folder, Day day);

} // namespace lidlark::usecase
