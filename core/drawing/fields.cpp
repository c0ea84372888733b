#include "core/drawing/fields.h"

#include "core/drawing/fault.h"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace lidlark::drawing {

namespace {

void demand(bool holds, const YamlNode &node, const std::string &reason)
{
    if (!holds)
        refuse(node, reason);
}

Path shapeIn(const YamlNode &node)
{
    demand(node.children.size() == 1, node, "a path is one shape");
    const YamlNode &shape = node.children.front();
    if (shape.key == "points")
        return lineThrough(pointsIn(shape));
    std::vector<double> n;
    for (const YamlNode &child : listIn(shape))
        n.push_back(numberIn(child));
    if (shape.key == "circle" && n.size() == 3)
        return circle({n[0], n[1]}, n[2]);
    if (shape.key == "ellipse" && n.size() == 4)
        return ellipse({n[0], n[1]}, {n[2], n[3]});
    if (shape.key == "box" && n.size() == 5)
        return box({n[0], n[1]}, {n[2], n[3]}, n[4]);
    refuse(shape, "a shape is circle [x, y, r], ellipse [x, y, rx, ry], box [x, y, wide, high, "
                  "corner] or points [[x, y], ...]");
}

} // namespace

void refuse(const YamlNode &node, const std::string &reason)
{
    throw Fault{{}, node.line, reason};
}

double numberIn(const YamlNode &node)
{
    double value = 0;
    const char *end = node.text.data() + node.text.size();
    const auto [stop, error] = std::from_chars(node.text.data(), end, value);
    demand(node.kind == YamlNode::Kind::Scalar && error == std::errc{} && stop == end &&
               std::abs(value) <= farthest,
           node, "must be a number");
    return value;
}

bool flagIn(const YamlNode &node)
{
    demand(node.text == "true" || node.text == "false", node, "must be true or false");
    return node.text == "true";
}

Point pointIn(const YamlNode &node)
{
    demand(listIn(node).size() == 2, node, "a place is two numbers");
    return {numberIn(node.children[0]), numberIn(node.children[1])};
}

std::vector<Point> pointsIn(const YamlNode &node)
{
    std::vector<Point> points;
    points.reserve(node.children.size());
    for (const YamlNode &child : listIn(node))
        points.push_back(pointIn(child));
    demand(points.size() >= 2, node, "a line has two places or more");
    return points;
}

Path pathIn(const YamlNode &node)
{
    if (node.kind == YamlNode::Kind::Map)
        return shapeIn(node);
    std::optional<Path> path = readPath(node.text);
    demand(node.kind == YamlNode::Kind::Scalar && path, node, "this is no path");
    return *std::move(path);
}

const std::vector<YamlNode> &listIn(const YamlNode &node)
{
    demand(node.kind == YamlNode::Kind::List, node, "must be a list");
    return node.children;
}

Fields::Fields(const YamlNode &record, std::initializer_list<std::string_view> known)
    : m_record(&record)
{
    demand(record.kind == YamlNode::Kind::Map, record, "must be named fields");
    for (const YamlNode &child : record.children)
        demand(std::ranges::find(known, child.key) != known.end(), child,
               "\"" + child.key + "\" is unknown here");
}

const YamlNode *Fields::find(std::string_view key) const
{
    const auto found = std::ranges::find(m_record->children, key, &YamlNode::key);
    return found == m_record->children.end() ? nullptr : &*found;
}

const YamlNode &Fields::at(std::string_view key) const
{
    const YamlNode *node = find(key);
    if (!node)
        refuse(*m_record, "\"" + std::string(key) + "\" is missing");
    return *node;
}

double Fields::number(std::string_view key, double otherwise) const
{
    const YamlNode *node = find(key);
    return node ? numberIn(*node) : otherwise;
}

bool Fields::flag(std::string_view key) const
{
    const YamlNode *node = find(key);
    return node && flagIn(*node);
}

std::string Fields::word(std::string_view key, std::string_view otherwise) const
{
    const YamlNode *node = find(key);
    return node ? node->text : std::string(otherwise);
}

Point Fields::point(std::string_view key, Point otherwise) const
{
    const YamlNode *node = find(key);
    return node ? pointIn(*node) : otherwise;
}

const std::vector<YamlNode> &Fields::list(std::string_view key) const
{
    static const std::vector<YamlNode> nothing;
    const YamlNode *node = find(key);
    return node ? listIn(*node) : nothing;
}

} // namespace lidlark::drawing
