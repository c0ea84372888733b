#pragma once

#include "core/base/yaml_tree.h"
#include "core/catalogue/findings.h"
#include "core/catalogue/item_kind.h"

namespace lidlark::catalogue {

/// Reads one item file and checks all that can be checked without the other files. The value is of
/// use only when @p findings stayed empty.
ItemKind readItem(const YamlNode &record, Findings &findings);

} // namespace lidlark::catalogue
