#pragma once

#include "core/base/yaml_tree.h"

#include <optional>
#include <string>
#include <string_view>
#include <variant>

namespace lidlark {

/// A file's tree in a form that is read again some ten times faster than its YAML: CBOR that says
/// so itself (RFC 8949, section 3.4.6). Keeps every line number, so that a fault is still named
/// where a person finds it in the file.
std::string packTree(const YamlNode &tree);

/// Whether @p text was written by packTree.
bool isPacked(std::string_view text);

/// Reads YAML or what packTree made of it. A packed text that is torn or foreign is a fault like
/// any other, within the same bounds; nothing is thrown, out of memory apart.
std::variant<YamlNode, YamlFault> readTree(std::string_view text, std::size_t levels = yamlLevels);

} // namespace lidlark
