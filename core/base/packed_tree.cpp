#include "core/base/packed_tree.h"

#include "core/base/cbor_levels.h"
#include "core/base/utf8.h"

#include <nlohmann/json.hpp>

#include <cstdint>

namespace lidlark {

namespace {

using nlohmann::json;

// The three bytes that say of themselves that CBOR follows.
constexpr std::string_view cborFollows{"\xd9\xd9\xf7"};
constexpr int valueLimit = 20'000;
constexpr std::size_t fieldCount = 6;

json packed(const YamlNode &node)
{
    json children = json::array();
    for (const YamlNode &child : node.children)
        children.push_back(packed(child));
    return json::array({static_cast<int>(node.kind), node.line, node.key, node.keyLine, node.quoted,
                        node.kind == YamlNode::Kind::Scalar ? json(node.text) : children});
}

/// Reads the packed tree, and stops at the first value that goes too far.
class Unpacking
{
public:
    explicit Unpacking(std::size_t levels) : m_levels(levels) {}

    bool read(const json &from, YamlNode &node, std::size_t level)
    {
        if (++m_values > valueLimit || !isNode(from))
            return false;
        node.kind = static_cast<YamlNode::Kind>(from[0].get<int>());
        node.line = from[1].get<int>();
        node.key = from[2].get<std::string>();
        node.keyLine = from[3].get<int>();
        node.quoted = from[4].get<bool>();
        const json &content = from[fieldCount - 1];
        if (node.kind == YamlNode::Kind::Scalar) {
            node.text = content.get<std::string>();
            return isPlainUtf8(node.text) && isPlainUtf8(node.key);
        }
        return isPlainUtf8(node.key) && readChildren(content, node, level);
    }

private:
    static bool isNode(const json &from)
    {
        return from.is_array() && from.size() == fieldCount && from[0].is_number_integer() &&
               from[0] >= 0 && from[0] <= static_cast<int>(YamlNode::Kind::Map) &&
               from[1].is_number_integer() && from[2].is_string() && from[3].is_number_integer() &&
               from[4].is_boolean() &&
               (static_cast<YamlNode::Kind>(from[0].get<int>()) == YamlNode::Kind::Scalar
                    ? from[fieldCount - 1].is_string()
                    : from[fieldCount - 1].is_array());
    }
    bool readChildren(const json &content, YamlNode &node, std::size_t level)
    {
        if (!content.empty() && (level >= m_levels || node.kind == YamlNode::Kind::Null))
            return false;
        node.children.resize(content.size());
        for (std::size_t i = 0; i < content.size(); ++i) {
            if (!read(content[i], node.children[i], level + 1))
                return false;
        }
        return true;
    }

    std::size_t m_levels;
    int m_values = 0;
};

std::variant<YamlNode, YamlFault> unpacked(std::string_view text, std::size_t levels)
{
    const YamlFault fault{0, "it is damaged, or no file of ours"};
    const std::string_view body = text.substr(cborFollows.size());
    // A node is a list, and its children one inside it.
    if (text.size() > yamlSizeLimit || !isShallowCbor(body, 2 * levels + 2))
        return fault;
    const json read = json::from_cbor(body.begin(), body.end(), true, false);
    YamlNode tree;
    if (read.is_discarded() || !Unpacking(levels).read(read, tree, 0))
        return fault;
    return tree;
}

} // namespace

std::string packTree(const YamlNode &tree)
{
    std::string text(cborFollows);
    const std::vector<std::uint8_t> bytes = json::to_cbor(packed(tree));
    text.append(bytes.begin(), bytes.end());
    return text;
}

bool isPacked(std::string_view text)
{
    return text.substr(0, cborFollows.size()) == cborFollows;
}

std::variant<YamlNode, YamlFault> readTree(std::string_view text, std::size_t levels)
{
    return isPacked(text) ? unpacked(text, levels) : readYaml(text, levels);
}

} // namespace lidlark
