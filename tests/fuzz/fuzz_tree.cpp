#include "tests/fuzz/target.h"

#include "core/base/packed_tree.h"
#include "core/base/utf8.h"

#include <algorithm>

namespace lidlark::fuzz {

namespace {

std::size_t levelsOf(const YamlNode &node)
{
    std::size_t inside = 0;
    for (const YamlNode &child : node.children)
        inside = std::max(inside, levelsOf(child));
    return inside + (node.kind == YamlNode::Kind::List || node.kind == YamlNode::Kind::Map ? 1 : 0);
}

void check(const YamlNode &node)
{
    must(isPlainUtf8(node.key) && isPlainUtf8(node.text), "a tree holds plain text");
    must(node.children.empty() || node.kind == YamlNode::Kind::List ||
             node.kind == YamlNode::Kind::Map,
         "only lists and maps hold anything");
    for (const YamlNode &child : node.children)
        check(child);
}

} // namespace

void tree(std::string_view bytes)
{
    const auto answer = readTree(bytes);
    const auto *read = std::get_if<YamlNode>(&answer);
    if (read == nullptr)
        return;
    check(*read);
    must(levelsOf(*read) <= yamlLevels, "a tree is no deeper than is allowed");
    const std::string packed = packTree(*read);
    if (packed.size() > yamlSizeLimit)
        return;
    const auto again = readTree(packed);
    must(std::holds_alternative<YamlNode>(again), "what was packed is read");
    must(packTree(std::get<YamlNode>(again)) == packed, "a packed tree is the same tree");
}

} // namespace lidlark::fuzz
