#include "core/drawing/shelf.h"

namespace lidlark::drawing {

namespace {

/// A hand holds a group of persons whose limbs are lists of points: deeper than a catalogue file.
constexpr std::size_t levelsOfADrawing = 20;

} // namespace

std::string_view folderOf(Kind kind)
{
    switch (kind) {
    case Kind::Hand:
        return "hands";
    case Kind::Part:
        return "parts";
    case Kind::Item:
        return "items";
    case Kind::Scene:
        break;
    }
    return "scenes";
}

Shelf::Shelf(std::span<const DrawingFile> files)
{
    for (const DrawingFile &file : files) {
        auto read = readYaml(file.text, levelsOfADrawing);
        if (const auto *fault = std::get_if<YamlFault>(&read))
            m_faults.push_back({fileOf(file.kind, file.name), fault->line, fault->reason});
        else
            m_nodes[file.kind].emplace(file.name, std::get<YamlNode>(std::move(read)));
    }
}

const YamlNode *Shelf::find(Kind kind, std::string_view name) const
{
    const auto folder = m_nodes.find(kind);
    if (folder == m_nodes.end())
        return nullptr;
    const auto found = folder->second.find(name);
    return found == folder->second.end() ? nullptr : &found->second;
}

std::vector<std::string> Shelf::names(Kind kind) const
{
    std::vector<std::string> names;
    if (const auto folder = m_nodes.find(kind); folder != m_nodes.end()) {
        for (const auto &[name, node] : folder->second)
            names.push_back(name);
    }
    return names;
}

std::string Shelf::fileOf(Kind kind, std::string_view name)
{
    return std::string(folderOf(kind)) + "/" + std::string(name) + ".yaml";
}

} // namespace lidlark::drawing
