#pragma once

#include "core/catalogue/record_reader.h"
#include "core/catalogue/review.h"

#include <vector>

namespace lidlark::catalogue {

/// The field `reviews` of an entry: {language, by, on, due} each; none when it is not there.
/// Findings: a date that is none, a second look due before the first or later than 24 months
/// after it, a language signed twice.
[[nodiscard]] std::vector<Review> readReviews(RecordReader &record);

/// What of a signature and the status of its entry does not go together.
void checkReviews(const Activity &activity, Findings &findings);

} // namespace lidlark::catalogue
