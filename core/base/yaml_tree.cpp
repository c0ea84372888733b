#include "core/base/yaml_tree.h"

#include "core/base/utf8.h"

#include <sstream>
#include <utility>

#include <yaml-cpp/eventhandler.h>
#include <yaml-cpp/exceptions.h>
#include <yaml-cpp/parser.h>

namespace lidlark {

namespace {

constexpr int longestValue = 20'000;

/// Builds the tree while the parser reads, so that a hostile file is stopped at the first value
/// that goes too far instead of after it has been read whole.
class TreeBuilder final : public YAML::EventHandler
{
public:
    explicit TreeBuilder(std::size_t levels) : m_levels(levels) {}

    [[nodiscard]] YamlNode take() { return std::move(m_root); }

    void OnDocumentStart(const YAML::Mark & /*mark*/) override {}
    void OnDocumentEnd() override {}
    void OnNull(const YAML::Mark &mark, YAML::anchor_t anchor) override
    {
        close(begin(YamlNode::Kind::Null, mark, "?", anchor));
    }
    void OnAlias(const YAML::Mark &mark, YAML::anchor_t /*anchor*/) override
    {
        throw YamlFault{mark.line + 1, "an alias (*) is not allowed here"};
    }
    void OnScalar(const YAML::Mark &mark, const std::string &tag, YAML::anchor_t anchor,
                  const std::string &value) override
    {
        YamlNode node = begin(YamlNode::Kind::Scalar, mark, tag, anchor);
        node.quoted = tag == "!";
        node.text = value;
        close(std::move(node));
    }
    void OnSequenceStart(const YAML::Mark &mark, const std::string &tag, YAML::anchor_t anchor,
                         YAML::EmitterStyle::value /*style*/) override
    {
        open(begin(YamlNode::Kind::List, mark, tag, anchor));
    }
    void OnSequenceEnd() override { closeInnermost(); }
    void OnMapStart(const YAML::Mark &mark, const std::string &tag, YAML::anchor_t anchor,
                    YAML::EmitterStyle::value /*style*/) override
    {
        open(begin(YamlNode::Kind::Map, mark, tag, anchor));
    }
    void OnMapEnd() override { closeInnermost(); }

private:
    /// A list or map that is still being read.
    struct Open {
        YamlNode node;
        bool keyRead = false; ///< In a map: a name waits for its value.
        std::string key;
        int keyLine = 0;
    };

    YamlNode begin(YamlNode::Kind kind, const YAML::Mark &mark, const std::string &tag,
                   YAML::anchor_t anchor)
    {
        const int line = mark.line + 1;
        if (anchor != YAML::NullAnchor)
            throw YamlFault{line, "an anchor (&) is not allowed here"};
        if (!tag.empty() && tag != "?" && tag != "!")
            throw YamlFault{line, "a type mark (!) is not allowed here"};
        if (++m_values > longestValue)
            throw YamlFault{line, "the file holds too many values"};
        YamlNode node;
        node.kind = kind;
        node.line = line;
        return node;
    }

    void open(YamlNode node)
    {
        if (m_open.size() >= m_levels)
            throw YamlFault{node.line, "the file is nested too deeply"};
        if (awaitsKey())
            throw YamlFault{node.line, "a name before a colon must be one word"};
        m_open.push_back({std::move(node), false, {}, 0});
    }

    void closeInnermost()
    {
        YamlNode node = std::move(m_open.back().node);
        m_open.pop_back();
        close(std::move(node));
    }

    void close(YamlNode node)
    {
        if (m_open.empty()) {
            m_root = std::move(node);
        } else if (awaitsKey()) {
            Open &map = m_open.back();
            map.key = std::move(node.text);
            map.keyLine = node.line;
            map.keyRead = true;
        } else {
            Open &around = m_open.back();
            node.key = std::exchange(around.key, {});
            node.keyLine = around.keyLine;
            // The parser notices an absent value only on the line after it.
            if (node.kind == YamlNode::Kind::Null && node.keyLine > 0)
                node.line = node.keyLine;
            around.keyRead = false;
            around.node.children.push_back(std::move(node));
        }
    }

    [[nodiscard]] bool awaitsKey() const
    {
        return !m_open.empty() && m_open.back().node.kind == YamlNode::Kind::Map &&
               !m_open.back().keyRead;
    }

    std::size_t m_levels;
    YamlNode m_root;
    std::vector<Open> m_open;
    int m_values = 0;
};

std::variant<YamlNode, YamlFault> parse(std::string_view text, std::size_t levels)
{
    std::istringstream stream{std::string(text)};
    YAML::Parser parser(stream);
    TreeBuilder builder(levels);
    if (!parser.HandleNextDocument(builder))
        return YamlFault{0, "the file is empty"};
    YamlNode root = builder.take();
    TreeBuilder second(levels);
    if (parser.HandleNextDocument(second))
        return YamlFault{second.take().line, "a file holds one entry, not several"};
    return root;
}

} // namespace

std::variant<YamlNode, YamlFault> readYaml(std::string_view text, std::size_t levels)
{
    if (text.size() > yamlSizeLimit)
        return YamlFault{0, "the file is larger than 256 KiB"};
    if (!isPlainUtf8(text))
        return YamlFault{0, "the file is not plain UTF-8 text"};
    try {
        return parse(text, levels);
    } catch (const YamlFault &fault) {
        return fault;
    } catch (const YAML::Exception &exception) {
        return YamlFault{exception.mark.is_null() ? 0 : exception.mark.line + 1,
                         "not readable as YAML: " + exception.msg};
    }
}

} // namespace lidlark
