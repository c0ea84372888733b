#pragma once

#include "core/usecase/family.h"

#include <nlohmann/json.hpp>

namespace lidlark::cli {

/// The box as design.md 11 shapes it.
nlohmann::ordered_json boxJson(const usecase::Family &family, const catalogue::Catalogue &catalogue,
                               DayPart now);

/// The only child of the store when @p child is empty. Errors: NotFound, or Invalid when there are
/// several.
Result<std::string> childOrOnly(store::Database &database, const std::string &child);

} // namespace lidlark::cli
