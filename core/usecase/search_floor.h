#pragma once

#include "core/usecase/family.h"

#include <string>
#include <vector>

namespace lidlark::usecase {

/// Why a lost piece is looked for on the floor.
enum class FloorDanger { None, SmallPart, BalloonPiece };

/// SMALL and COIN may be swallowed, a piece of a balloon can block a throat (activities.md 1.4;
/// safety.md SP-06, BL-02). @param kind null: an item nobody knows any more may be small.
FloorDanger floorDangerOf(const catalogue::ItemKind *kind);

/// One item of which something may lie on the floor.
struct MissingItem {
    ItemId item;
    FloorDanger danger = FloorDanger::SmallPart;
    int pieces = 0; ///< Of all its open notes; for a balloon: how many burst or got lost.
};

/// What a home has to look for now (job.md scenarios 2 and 5).
struct FloorSearch {
    std::vector<MissingItem> missing;   ///< The item longest missing first.
    std::vector<std::string> smallOnes; ///< Aliases of those who live here and may swallow it.
    bool smallOneLivesHere = false;     ///< Also when nobody can be named.
    [[nodiscard]] bool balloon() const; ///< Pieces of a balloon are among it.
    /// Nothing else comes first: a piece of a balloon in any home, a small part in a home with
    /// somebody who may swallow it (job.md G2).
    [[nodiscard]] bool isUrgent() const;
};

/// A pure view of what @p family knows on @p today.
FloorSearch floorSearchOf(const Family &family, const catalogue::Catalogue &catalogue, Day today);

/// What of it turned up: pieces by item.
using FoundPieces = std::map<ItemId, int>;

/// Small parts that turned up go back into the box. A balloon of which every piece turned up is
/// used up, never in the box again: its pieces go into the bin (safety.md BL-02). All or nothing.
/// Errors: NotFound (child), Invalid (nothing named, more than is missing, or some balloons of an
/// item and not all: which of them burst nobody can tell).
Outcome notePiecesFound(Workplace &workplace, const std::string &childAlias,
                        const std::string &author, const FoundPieces &found);

} // namespace lidlark::usecase
