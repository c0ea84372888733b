#pragma once

#include "core/child/avoided.h"
#include "core/journal/seen.h"
#include "core/workbench/handed.h"
#include "core/workbench/kept_design.h"
#include "core/workbench/purchase.h"

#include <set>
#include <span>

namespace lidlark::workbench {

/// Why a box departs from its design (job.md T3).
enum class Why { Hand, Allergy, Home, Goals, Mouthing, Age };
inline constexpr EnumNames<Why, 6> whyNames{
    {"hand", "allergy", "home", "goals", "mouthing", "age"}};

/// One departure with its reason.
struct Departure {
    ItemId item; ///< Of the design: what is left out, swapped or counted otherwise.
    Why why = Why::Home;
    std::string words; ///< In the therapist's own words, one line; may be empty.
    bool operator==(const Departure &) const = default;
};

/// What is personal about one box of a build.
struct Personal {
    Hand hand = Hand::Unsaid;
    std::set<child::Avoided> avoids; ///< What the child, or anybody at home, must not have.
    std::vector<Departure> departures;
    bool operator==(const Personal &) const = default;
};

/// One box as it is kept.
struct KeptBox {
    BuildBox box;
    Personal personal;
    /// Two people have written it without knowing of each other: the later one is shown, and the
    /// box is not ready until somebody who has seen both writes it anew.
    bool disputed = false;
    bool operator==(const KeptBox &) const = default;
};

/// Boxes that are packed together, as the clinic keeps them.
struct KeptBuild {
    BuildId id;
    std::string name; ///< "Spring boxes".
    Day day;          ///< On which they are packed.
    std::string currency = "GBP";
    int sparesPercent = 10;
    std::vector<KeptBox> boxes; ///< By code: K2 before K10.
    std::vector<Purchase> purchases = {};
    bool operator==(const KeptBuild &) const = default;

    [[nodiscard]] const KeptBox *box(const std::string &code) const;
    /// What is bought and reckoned with.
    [[nodiscard]] Build build() const;
};

/// The build without its boxes, and each box: registers of their own, so that two people change two
/// boxes of one build.
std::string fieldsOfHead(const KeptBuild &build);
std::string fieldsOfBox(const BuildId &build, const KeptBox &box);
std::string fieldsOfBoxRemoval(const BuildId &build, const std::string &code);

/// @param events of one subject "build:<id>", any order; pack marks among them are passed over.
/// @returns nothing where nobody has said what build it is.
std::optional<KeptBuild> foldBuild(std::span<const journal::Event> events,
                                   const journal::Seen &seen);

} // namespace lidlark::workbench
