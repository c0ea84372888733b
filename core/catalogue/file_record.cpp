#include "core/catalogue/file_record.h"

#include "core/base/packed_tree.h"

#include <variant>

namespace lidlark::catalogue {

std::string stemOf(std::string_view name)
{
    const std::size_t slash = name.find_last_of('/');
    if (slash != std::string_view::npos)
        name.remove_prefix(slash + 1);
    if (name.ends_with(".yaml"))
        name.remove_suffix(5);
    return std::string(name);
}

std::optional<YamlNode> recordOf(const SourceFile &file, Findings &findings)
{
    auto read = readTree(file.text);
    if (const auto *fault = std::get_if<YamlFault>(&read)) {
        findings.add(fault->line, {}, fault->reason);
        return std::nullopt;
    }
    auto &node = std::get<YamlNode>(read);
    if (node.kind == YamlNode::Kind::Map)
        return std::move(node);
    if (node.kind == YamlNode::Kind::Null)
        findings.add(0, {}, "the file is empty");
    else
        findings.add(node.line, {}, "the file must be a group of named fields");
    return std::nullopt;
}

} // namespace lidlark::catalogue
