#pragma once

#include <QString>

#include "core/usecase/keep_supply.h"
#include "mobile/bridge/household.h"

#include <string>
#include <vector>

namespace lidlark::mobile {

/// What the pages of the shelf ask of the therapist's store.

/// A thing that boxes are packed with: what the catalogue knows of it, and what the clinic keeps.
struct ShelfThing {
    const catalogue::ItemKind *kind = nullptr; ///< Null: the catalogue does not know it.
    workbench::KeptSupply kept; ///< Nothing kept yet: its item, and nothing on the shelf.

    [[nodiscard]] const ItemId &item() const { return kept.supply.item; }
};

/// Every box item of the catalogue and every kept supply beyond it, in the order of the tray.
Result<std::vector<ShelfThing>> thingsOnShelf(Household &household);

/// One of them; of what nobody has heard of, a thing with no name yet. @param item empty: a new
/// thing.
Result<ShelfThing> thingOnShelf(Household &household, const ItemId &item);

/// "Rubber bands"; "Scissors, left" as its supply is named.
QString shelfName(const ShelfThing &thing);
/// What the catalogue does not know is drawn as a box.
QString shelfDrawing(const ShelfThing &thing);

/// What a price is in, where its offer does not say: as the newest build has it, else GBP.
std::string shelfCurrency(Household &household);

/// Keeps it, and tells everybody who looks. @param supply without an item: a new thing, which gets
/// an id from its name.
Outcome keepOnShelf(Household &household, workbench::KeptSupply supply);

} // namespace lidlark::mobile
