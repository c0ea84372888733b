#pragma once

#include "core/catalogue/life.h"
#include "core/catalogue/record_reader.h"

#include <optional>

namespace lidlark::catalogue {

/// The field `life` of an item, or a life without limits.
Life readLife(RecordReader &item);

/// The field `use` of an item; nothing when it is not written.
std::optional<UsePrior> readUse(RecordReader &item);

} // namespace lidlark::catalogue
