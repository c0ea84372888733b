#include "core/cli/build_file.h"

#include "core/cli/strict_json.h"
#include "core/journal/bounded_json.h"

#include <algorithm>
#include <utility>

namespace lidlark::cli {

namespace {

using Value = nlohmann::json;
using workbench::BoxPart;
using workbench::BuildBox;
using workbench::Design;

workbench::PackOffer offerFrom(const Value &value, const std::string &path, FirstError &error)
{
    StrictJson read(value, path, error, {"shop", "pieces", "pence", "currency"});
    return {read.text("shop", ""), read.whole("pieces"), read.pence("pence"),
            read.text("currency", "")};
}

workbench::Supply supplyFrom(const Value &value, const std::string &path, FirstError &error)
{
    StrictJson read(value, path, error, {"id", "name", "in_stock", "used_up", "offers"});
    workbench::Supply supply;
    supply.item = {read.text("id")};
    supply.name = read.text("name", supply.item.value);
    supply.inStock = read.whole("in_stock", 0);
    supply.usedUp = read.yes("used_up");
    for (const auto &[offer, where] : read.list("offers"))
        supply.offers.push_back(offerFrom(*offer, where, error));
    return supply;
}

/// In the order of the items, as an object of JSON has none.
std::vector<BoxPart> partsFrom(const std::map<std::string, int> &counts,
                               const std::vector<workbench::Supply> &supplies)
{
    std::map<std::string, int> left = counts;
    std::vector<BoxPart> parts;
    for (const workbench::Supply &supply : supplies) {
        if (const auto found = left.extract(supply.item.value))
            parts.push_back({supply.item, found.mapped(), {}});
    }
    for (const auto &[item, pieces] : left)
        parts.push_back({{item}, pieces, {}});
    return parts;
}

/// What is changed to no piece is left out.
std::vector<BoxPart> changed(const Design &design, const std::map<std::string, int> &changes,
                             const std::vector<workbench::Supply> &supplies)
{
    std::map<std::string, int> added = changes;
    std::vector<BoxPart> parts;
    for (BoxPart part : design.parts) {
        if (const auto found = added.extract(part.item.value))
            part.pieces = found.mapped();
        if (part.pieces != 0)
            parts.push_back(std::move(part));
    }
    for (BoxPart &part : partsFrom(added, supplies))
        parts.push_back(std::move(part));
    return parts;
}

/// Reads what stands upon the items: designs, and boxes upon those.
class BuildReader
{
public:
    BuildReader(BuildFile &file, FirstError &error) : m_file(file), m_error(error) {}

    void addDesign(const Value &value, const std::string &path)
    {
        StrictJson read(value, path, m_error, {"id", "name", "parts"});
        Design design;
        design.id = {read.text("id")};
        design.name = read.text("name", design.id.value);
        design.parts = partsFrom(read.counts("parts"), m_file.supplies);
        if (designOf(design.id))
            read.refuse("id", "another design has it");
        m_file.designs.push_back(std::move(design));
    }

    void addBoxes(const Value &value, const std::string &path)
    {
        StrictJson read(value, path, m_error,
                        {"code", "whose", "design", "parts", "changes", "instead_of", "times"});
        BuildBox box;
        box.code = read.text("code");
        box.whose = read.text("whose", "");
        box.design = {read.text("design", "")};
        box.parts = partsOf(read, box.design);
        for (const auto &[item, original] : read.names("instead_of")) {
            const auto part = std::ranges::find(box.parts, ItemId{item}, &BoxPart::item);
            if (part == box.parts.end())
                read.refuse("instead_of." + item, "not in this box");
            else
                part->insteadOf = {original};
        }
        const int times = read.whole("times", 1);
        if (times < 1)
            read.refuse("times", "at least one");
        add(box, times);
    }

private:
    [[nodiscard]] const Design *designOf(const workbench::DesignId &id) const
    {
        const auto found = std::ranges::find(m_file.designs, id, &Design::id);
        return found == m_file.designs.end() ? nullptr : &*found;
    }

    std::vector<BoxPart> partsOf(StrictJson &read, const workbench::DesignId &id)
    {
        const Design *design = designOf(id);
        if (!id.empty() && !design)
            read.refuse("design", "not among the designs");
        const bool isWhole = read.has("parts");
        if (isWhole ? read.has("changes") : !design)
            read.refuse("parts", "say either all parts, or a design and what changes");
        if (isWhole || !design)
            return partsFrom(read.counts("parts"), m_file.supplies);
        return changed(*design, read.counts("changes"), m_file.supplies);
    }

    /// One more than a build may hold is enough for it to be refused.
    void add(const BuildBox &box, int times)
    {
        std::vector<BuildBox> &boxes = m_file.build.boxes;
        for (int i = 1; i <= times && boxes.size() <= workbench::mostBoxes; ++i) {
            boxes.push_back(box);
            if (times > 1)
                boxes.back().code += "-" + std::to_string(i);
        }
    }

    BuildFile &m_file;
    FirstError &m_error;
};

} // namespace

Result<BuildFile> readBuildFile(const std::string &text)
{
    const Value root = journal::readJson(text);
    FirstError error;
    if (!root.is_object())
        return Error{ErrorCode::Invalid, "file: not a JSON object"};
    StrictJson read(root, "", error, {"currency", "spares_percent", "items", "designs", "boxes"});
    BuildFile file;
    file.build.currency = read.text("currency");
    file.build.sparesPercent = read.whole("spares_percent");
    for (const auto &[item, path] : read.list("items"))
        file.supplies.push_back(supplyFrom(*item, path, error));
    BuildReader reader(file, error);
    for (const auto &[design, path] : read.list("designs"))
        reader.addDesign(*design, path);
    for (const auto &[box, path] : read.list("boxes"))
        reader.addBoxes(*box, path);
    if (error)
        return *error;
    return file;
}

} // namespace lidlark::cli
