#pragma once

#include "core/catalogue/catalogue.h"
#include "core/wording/sentence.h"

#include <optional>

namespace lidlark::wording {

/// What of the catalogue could not be read, for whoever uses the app; nothing when all could. The
/// line and the field are for whoever writes the files: catalogue::Problem::text().
std::optional<Sentence> missingFrom(const catalogue::Catalogue &catalogue);

} // namespace lidlark::wording
