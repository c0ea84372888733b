#pragma once

#include "core/base/enum_names.h"
#include "core/measure/cord.h"
#include "core/measure/film.h"
#include "core/measure/hollow.h"
#include "core/measure/solid.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace lidlark::catalogue {

/// Whether a round thing is thrown, hit, kicked, rolled, dropped or bounced, as a ball or as a hard
/// marble. Dice are no balls. Source: 16 CFR 1500.19(a)(1), 1117.2(b) and (e).
enum class RollsAs : std::uint8_t { Nothing, Ball, Marble };
inline constexpr EnumNames<RollsAs, 3> rollsAsNames{{"nothing", "ball", "marble"}};

/// A part that comes off, or can be pulled off by hand: no abuse test was made, so whatever a
/// parent can pull off counts as loose (safety.md 0).
struct LoosePart {
    std::string name; ///< "spring".
    measure::Solid solid;
    bool suctionCup = false; ///< Or a dart tip (safety.md SU-01).
    bool operator==(const LoosePart &) const = default;
};

/// What of one kind can be measured. A thing has a `whole`, or a `soft` that says why an
/// uncompressed size of it means nothing (safety.md 6: balloon, lace, foil, band, dough).
struct Measures {
    std::optional<measure::Solid> whole; ///< One piece, as it is packed.
    std::optional<measure::Solid>
        least; ///< As small as it may get by use before it is thrown away.
    std::string soft;
    RollsAs rollsAs = RollsAs::Nothing;
    std::vector<LoosePart> comesOff;
    std::optional<measure::Cord> cord;
    std::optional<measure::Film> film;
    std::optional<measure::Hollow> hollow;
    bool operator==(const Measures &) const = default;
};

/// What never goes into a box, however it is measured.
/// Source: activities.md 1.4, last paragraph; safety.md MG-01, BB-01, EX-01, EO-01, MD-04, PB-02,
/// FD-01 (no entry of ours is played with food).
enum class Banned : std::uint8_t {
    Magnet,
    Battery,
    SwellsInWater,
    EssentialOil,
    Glitter,
    HotGlue,
    ClingFilm,
    Food
};
inline constexpr EnumNames<Banned, 8> bannedNames{{"magnet", "battery", "swells in water",
                                                   "essential oil", "glitter", "hot glue",
                                                   "cling film", "food"}};

} // namespace lidlark::catalogue
