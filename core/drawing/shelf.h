#pragma once

#include "core/base/yaml_tree.h"
#include "core/drawing/fault.h"

#include <array>
#include <map>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace lidlark::drawing {

/// What a file of drawings is: its folder.
enum class Kind { Hand, Part, Item, Scene };
inline constexpr std::array kinds{Kind::Hand, Kind::Part, Kind::Item, Kind::Scene};
/// "scenes"
[[nodiscard]] std::string_view folderOf(Kind kind);

/// One file of assets/drawings as read by whoever runs the core.
struct DrawingFile {
    Kind kind = Kind::Scene;
    std::string name; ///< Without folder and ending: "snip-hedge".
    std::string text;
};

/// All drawings and what they are made of, read but not composed.
class Shelf
{
public:
    /// A file that is no YAML of ours (core/base/yaml_tree) becomes a fault and is left out.
    explicit Shelf(std::span<const DrawingFile> files);

    /// @returns null when there is none of that name.
    [[nodiscard]] const YamlNode *find(Kind kind, std::string_view name) const;
    /// Names of one kind, in order.
    [[nodiscard]] std::vector<std::string> names(Kind kind) const;
    [[nodiscard]] const std::vector<Fault> &faults() const { return m_faults; }

    /// "scenes/snip-hedge.yaml"
    [[nodiscard]] static std::string fileOf(Kind kind, std::string_view name);

private:
    std::map<Kind, std::map<std::string, YamlNode, std::less<>>> m_nodes;
    std::vector<Fault> m_faults;
};

} // namespace lidlark::drawing
