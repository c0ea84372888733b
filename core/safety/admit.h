#pragma once

#include "core/catalogue/catalogue.h"
#include "core/child/home_sheet.h"
#include "core/safety/reason.h"
#include "core/safety/room.h"

#include <map>
#include <span>
#include <variant>
#include <vector>

namespace lidlark::safety {

/// One line of what is really there, as the ledger knows it.
struct ItemStock {
    int low = 0;           ///< The careful count: what may be promised (events.md 6.5).
    bool pastDate = false; ///< Perishable past its limit, or dried out.
    bool toWash = false;   ///< In a mouth, and neither washed nor replaced since (HY-01).
    bool operator==(const ItemStock &) const = default;
};

/// The box as the gate reads it.
struct BoxState {
    bool here = true;                  ///< False: at school, in the other home, away.
    std::string place;                 ///< Where it is when not here, in the family's words.
    std::map<ItemId, ItemStock> items; ///< Items of the confirmed lid list, swaps included.
    bool floorNoteOpen = false;        ///< A lost small part has not been found (scenario 5).
    bool balloonNoteOpen = false;      ///< A piece of a burst balloon has not been found.
};

/// Everything the gate reads besides the activity.
struct Situation {
    const child::Child &child;
    const child::HomeSheet *home = nullptr; ///< Null: nothing is known of the home.
    const Room &room;
    const BoxState &box;
    const catalogue::Catalogue &catalogue;
    Day today;
};

/// An activity that passed the gate, in the form in which it may be played here and now.
/// Only `admit` can make one, and the menu takes nothing else.
class Admitted
{
public:
    [[nodiscard]] const catalogue::Activity &activity() const { return *m_activity; }
    /// Original item -> what is used in its place.
    [[nodiscard]] const std::map<ItemId, ItemId> &swaps() const { return m_swaps; }
    /// Tags of this form: the activity's, less those of swapped items, plus the swaps' own.
    [[nodiscard]] catalogue::TagSet cautions() const { return m_cautions; }
    /// At least the entry's own, raised where the room asks for it.
    [[nodiscard]] catalogue::Supervision supervision() const { return m_supervision; }
    /// Box and household items really used, swaps applied, with what has to come home.
    [[nodiscard]] const std::vector<catalogue::ItemUse> &items() const { return m_items; }

private:
    friend class Gate;
    Admitted() = default;
    const catalogue::Activity *m_activity = nullptr;
    std::map<ItemId, ItemId> m_swaps;
    catalogue::TagSet m_cautions;
    catalogue::Supervision m_supervision = catalogue::Supervision::Beside;
    std::vector<catalogue::ItemUse> m_items;
};

/// Why not; never empty.
using Refusal = std::vector<Reason>;
using Admission = std::variant<Admitted, Refusal>;

/// The gate (activities.md 2.1, 1.4; safety.md 1). Pure, offline, fails closed: what is not known
/// refuses. All reasons are collected, not only the first.
Admission admit(const catalogue::Activity &activity, const Situation &situation);

struct HeldBack {
    const catalogue::Activity *activity = nullptr;
    Refusal reasons;
};

struct Gated {
    std::vector<Admitted> admitted;
    std::vector<HeldBack> heldBack;
};

/// The whole catalogue through the gate, in the catalogue's order.
Gated admitAll(const Situation &situation);

} // namespace lidlark::safety
