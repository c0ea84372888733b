#pragma once

#include "core/base/yaml_tree.h"
#include "core/catalogue/activity.h"
#include "core/catalogue/findings.h"

namespace lidlark::catalogue {

/// Reads one activity file: names, types, words and bounds. What one field says about another is
/// checked by `checkActivity`. The value is of use only when @p findings stayed empty.
Activity readActivity(const YamlNode &record, Findings &findings);

} // namespace lidlark::catalogue
