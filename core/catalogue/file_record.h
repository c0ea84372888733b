#pragma once

#include "core/base/yaml_tree.h"
#include "core/catalogue/findings.h"

#include <exception>
#include <optional>
#include <string>
#include <string_view>

namespace lidlark::catalogue {

/// "activities/slow-oars.yaml" -> "slow-oars".
std::string stemOf(std::string_view name);

/// The file's top level, or nothing and a finding.
std::optional<YamlNode> recordOf(const SourceFile &file, Findings &findings);

/// Hands the file's top level to @p read. Whatever the file makes the reader throw stays inside
/// that file, as a finding.
template <class Read> void readRecord(const SourceFile &file, Findings &findings, Read &&read)
{
    try {
        if (const std::optional<YamlNode> record = recordOf(file, findings))
            read(*record);
    } catch (const std::exception &exception) {
        findings.add(0, {}, std::string("the file could not be read: ") + exception.what());
    } catch (...) {
        findings.add(0, {}, "the file could not be read");
    }
}

} // namespace lidlark::catalogue
