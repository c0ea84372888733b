#pragma once

#include "core/usecase/build_sheet.h"
#include "core/workbench/design_difference.h"

#include <cstdint>
#include <map>
#include <string>
#include <vector>

namespace lidlark::usecase {

/// Packs of one size, from one shop, that a build sheet buys.
struct PacksBought {
    std::string shop;           ///< Empty: nobody said where.
    int pieces = 0;             ///< In one pack.
    int packs = 0;              ///< One or more.
    workbench::TillPence price; ///< Of one pack.
    bool operator==(const PacksBought &) const = default;
};

/// What a build asks of one item, and what is bought for it.
struct BuildSheetLine {
    ItemId item;
    std::int64_t need = 0; ///< Without spares.
    std::int64_t spares = 0;
    std::int64_t onTheShelf = 0;
    std::vector<PacksBought> packs; ///< None: the shelf has enough.
    workbench::TillPence spend;
    std::int64_t leftOver = 0;
    bool operator==(const BuildSheetLine &) const = default;
};

/// Boxes that hold the same things.
struct BoxesAlike {
    std::string design;             ///< Its name; empty: they have none that is known.
    std::vector<std::string> codes; ///< One or more, in the order of the build.
    std::vector<workbench::DesignDifference> differences; ///< From their design.
    workbench::MaterialPence worth;                       ///< Of what is in one of them.
    std::vector<ItemId> unpriced;                         ///< In it, and not in its worth.
};

/// What stands on a printed build sheet (job.md T2, 2.8): what is paid today, and by itself what is
/// in each box. The two never mix.
struct BuildSheetPage {
    std::string name; ///< Of the build.
    Day day;
    std::string currency; ///< ISO 4217.
    int boxes = 0;
    std::vector<BuildSheetLine> lines;   ///< Of what its boxes need, in the order they name it.
    workbench::TillPence spend;          ///< What you spend today.
    std::vector<BoxesAlike> kinds;       ///< Most boxes first.
    std::map<ItemId, std::string> names; ///< As their supplies are kept.
    workbench::BuildProblems problems;   ///< To be put right first: nothing else is reckoned then.
};

/// Errors: NotFound (build), those of the store.
Result<BuildSheetPage> buildSheetPageOf(Workplace &therapist, const workbench::BuildId &build);

} // namespace lidlark::usecase
