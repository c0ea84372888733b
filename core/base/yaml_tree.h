#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace lidlark {

/// One value of a file of ours (catalogue, drawings), with the line it stands on.
struct YamlNode {
    enum class Kind { Null, Scalar, List, Map };
    Kind kind = Kind::Null;
    int line = 0;                   ///< 1-based.
    std::string key;                ///< Its name inside a map; empty elsewhere.
    int keyLine = 0;                ///< Where that name stands.
    bool quoted = false;            ///< "5" in quotes is text, not a number.
    std::string text;               ///< Of a scalar.
    std::vector<YamlNode> children; ///< Of a list or map, in the order written.
};

/// Why a text is no such file.
struct YamlFault {
    int line = 0; ///< 1-based; 0: the file as a whole.
    std::string reason;
};

inline constexpr std::size_t yamlSizeLimit = std::size_t{256} * 1024; ///< Bytes.
inline constexpr std::size_t yamlLevels = 8; ///< Lists and maps inside each other.

/// Reads the small part of YAML that these files use: one document of maps, lists and scalars.
/// Anything with which a file could grow beyond its size or its reader is a fault: anchors,
/// aliases, tags of types, more than @p levels, more than 20,000 values, more than 256 KiB, bytes
/// that are not UTF-8 (RFC 3629). Never throws for any text, out of memory apart.
std::variant<YamlNode, YamlFault> readYaml(std::string_view text, std::size_t levels = yamlLevels);

} // namespace lidlark
