#pragma once

#include "core/box/answers.h"
#include "core/box/item_changes.h"
#include "core/journal/meetings.h"

#include <optional>
#include <span>
#include <vector>

namespace lidlark::box {

/// How a change stands to a count: the count had it in its number, it came after, or nobody knows.
enum class Relation { Covered, After, Open };

/// What the stock of an item is worked out from (events.md 6.1).
struct Basis {
    /// Null stands for the packed number. Several: nobody has said which count was the last.
    std::vector<const journal::Event *> counts;
    std::optional<Question> question; ///< Who counted last; answered or open.
};

Basis basisOf(std::span<const journal::Event> events, const Answers &answers,
              const journal::Meetings &meetings);

/// @param event the change's first event, or a removal.
Relation relationTo(const journal::Event *count, const journal::Event &event,
                    const journal::Meetings &meetings);

/// "Was that before or after the count?", with its answer where there is one.
Question beforeOrAfter(const journal::Event &count, const Change &change, const Answers &answers);

} // namespace lidlark::box
