#pragma once

#include "core/base/yaml_tree.h"
#include "core/drawing/path.h"

#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lidlark::drawing {

/// Stops the drawing with a reason at the line of @p node.
[[noreturn]] void refuse(const YamlNode &node, const std::string &reason);

[[nodiscard]] double numberIn(const YamlNode &node);
[[nodiscard]] bool flagIn(const YamlNode &node);
/// "[12, 40.5]"
[[nodiscard]] Point pointIn(const YamlNode &node);
/// "[[12, 40], [30, 40]]"
[[nodiscard]] std::vector<Point> pointsIn(const YamlNode &node);
/// Path data as SVG writes it, or {circle: [x, y, r]}, {ellipse: [x, y, rx, ry]},
/// {box: [x, y, wide, high, corner]}, {points: [[x, y], ...]}.
[[nodiscard]] Path pathIn(const YamlNode &node);
/// @returns @p node, which must be a list.
[[nodiscard]] const std::vector<YamlNode> &listIn(const YamlNode &node);

/// The named fields of one record (a map of YAML). Every reader of a drawing says first which
/// fields it knows, so that a name mistyped is a fault and not a picture with something missing.
class Fields
{
public:
    Fields(const YamlNode &record, std::initializer_list<std::string_view> known);

    [[nodiscard]] const YamlNode &record() const { return *m_record; }
    /// @returns null when it is not there.
    [[nodiscard]] const YamlNode *find(std::string_view key) const;
    /// A field that must be there.
    [[nodiscard]] const YamlNode &at(std::string_view key) const;
    [[nodiscard]] double number(std::string_view key, double otherwise) const;
    [[nodiscard]] bool flag(std::string_view key) const;
    [[nodiscard]] std::string word(std::string_view key, std::string_view otherwise) const;
    [[nodiscard]] Point point(std::string_view key, Point otherwise) const;
    /// The children of a list, or of nothing.
    [[nodiscard]] const std::vector<YamlNode> &list(std::string_view key) const;

private:
    const YamlNode *m_record;
};

} // namespace lidlark::drawing
