#pragma once

#include "core/workbench/build.h"
#include "core/workbench/supply.h"

#include "tests/core/catalogue/shipped_catalogue.h"

#include <string>
#include <vector>

/// The golden case of reference/job.md 2.8, from the copy of its table in
/// tests/data/workbench/golden_sheet.csv. What each kind of box holds was read off its needs
/// ("6 x 20": in all boxes but those of two latex-avoiding and three mouthing homes).
namespace golden {

using namespace lidlark;
using namespace lidlark::workbench;

inline const std::vector<shipped::Row> &rows()
{
    static const std::vector<shipped::Row> all =
        shipped::rowsOf("tests/data/workbench/golden_sheet.csv");
    return all;
}

inline std::vector<Supply> supplies()
{
    std::vector<Supply> supplies;
    for (const shipped::Row &row : rows()) {
        Supply supply{{row.at("item").toStdString()}, row.at("name").toStdString(), {}, 0, false};
        supply.inStock = row.at("in_stock").toInt();
        supply.usedUp = row.at("used_up") == "yes";
        supply.offers = {{"", row.at("pack").toInt(), row.at("pence").toInt(), ""}};
        supplies.push_back(supply);
    }
    return supplies;
}

/// @param kind a column of the table: "standard".
inline BuildBox box(const QString &kind, const std::string &code)
{
    BuildBox box{code, "", {kind.toStdString()}, {}};
    for (const shipped::Row &row : rows()) {
        if (row.at(kind) != "0")
            box.parts.push_back({{row.at("item").toStdString()}, row.at(kind).toInt(), {}});
    }
    return box;
}

inline BuildBox leftHanded(BuildBox box)
{
    for (BoxPart &part : box.parts) {
        if (part.item == ItemId{"scissors"})
            part = {{"scissors-left"}, 1, {"scissors"}};
    }
    return box;
}

/// 19 standard boxes, three of them for children who cut left-handed; 2, 1 and 3 special ones.
inline Build build()
{
    Build build;
    const auto add = [&build](const QString &kind, int boxes, bool left = false) {
        for (int i = 0; i < boxes; ++i) {
            const std::string code = "B" + std::to_string(build.boxes.size());
            build.boxes.push_back(left ? leftHanded(box(kind, code)) : box(kind, code));
        }
    };
    add("standard", 16);
    add("standard", 3, true);
    add("latex_avoiding", 2);
    add("wheat_free", 1);
    add("mouthing", 3);
    return build;
}

} // namespace golden
