#pragma once

#include "core/catalogue/catalogue.h"
#include "core/wording/sentence.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace lidlark::wording {

/// Whose label words are shown.
enum class Region { UnitedStates, Europe };

/// @param territory two letters of ISO 3166-1, or a locale such as "en_US". Everywhere but in the
/// United States and its territories the words of Europe are shown.
Region regionOf(std::string_view territory);

/// Words that stand on a label, and where they come from.
struct LabelWords {
    Sentence words;
    Sentence source;
    bool operator==(const LabelWords &) const = default;
};

/// The label words of what is really used, in this order: balloon; what is a small ball or a
/// marble; what contains one; small parts. A thing that is itself a small ball or a marble gets no
/// words about what it contains, nor about small parts, for itself. The order is that of a
/// marketplace's compliance page; no regulation was found that prescribes it (safety.md 2).
///
/// Shown exactly, in English; in another language the translation stands above them and never in
/// their place. Sources: United States: 16 CFR 1500.19(b),
/// rows L-1 to L-6 of safety.md 2, as ONIX code list 143 reproduces them (CPSC document 282, read
/// in a copy, has the same words but for "eight" in place of "8"). Europe: balloon words, row L-7
/// (Eurofins page; which text prescribes them was not found); small parts, small balls and marbles:
/// "Not suitable for children under three years" is read in the UK Toys (Safety) Regulations 2011,
/// schedule 5 part B, which asks for a brief indication of the hazard: those last words are ours.
/// Shown whatever the child's age: the statute ends small parts at six years, and longer is careful
/// (brothers and sisters).
///
/// @param items swaps applied. @param cautions of the form that is played.
std::vector<LabelWords> labelWords(const catalogue::Activity &activity,
                                   const std::vector<catalogue::ItemUse> &items,
                                   catalogue::TagSet cautions,
                                   const catalogue::Catalogue &catalogue, Region region);

/// Words that stand on a label, and which things of a box they are about.
struct BoxLabelWords {
    LabelWords label;
    std::vector<ItemId> items; ///< At least one, in the order of the box.
    bool operator==(const BoxLabelWords &) const = default;
};

/// The label words of all that lies in a box, for when it is handed on on paper; in the same order
/// and by the same rules. Of pieces that are only made while playing nothing is said here: the
/// activity says it.
/// @param items what the catalogue does not know says nothing.
std::vector<BoxLabelWords> labelWordsOfBox(std::span<const ItemId> items,
                                           const catalogue::Catalogue &catalogue, Region region);

} // namespace lidlark::wording
