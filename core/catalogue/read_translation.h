#pragma once

#include "core/base/yaml_tree.h"
#include "core/catalogue/activity.h"
#include "core/catalogue/findings.h"
#include "core/catalogue/record_reader.h"

namespace lidlark::catalogue {

/// @p english with the words of a translation in place of its own. The value is of use only when
/// @p findings stayed empty.
Activity readActivityTranslation(const YamlNode &record, const Activity &english,
                                 Findings &findings);

/// The same for one item.
/// @param path where the item stands in its file: "items.eyes".
/// @param origin what the file says of all its items.
ItemKind readItemTranslation(const YamlNode &record, const std::string &path, WordsOrigin origin,
                             const ItemKind &english, Findings &findings);

/// MachineMade or Reviewed, as the field says; anything else is a finding.
WordsOrigin readWordsOrigin(RecordReader &record, std::string_view key);

} // namespace lidlark::catalogue
