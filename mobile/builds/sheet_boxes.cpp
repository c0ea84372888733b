#include "sheet_view_model.h"

#include "core/workbench/boxes_alike.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/text.h"

#include <utility>

namespace lidlark::mobile {

void SheetViewModel::groupBoxes()
{
    for (auto &alike : workbench::boxesAlike(m_sheet.build.boxes)) {
        const workbench::BoxCost &cost = sheet()->boxes[alike.front()];
        m_groups.push_back({std::move(alike), cost.material.pence, !cost.unpriced.empty()});
    }
}

QString SheetViewModel::groupName(const Group &group) const
{
    const workbench::KeptBox &box = m_sheet.build.boxes[group.boxes.front()];
    const auto design = m_designs.find(box.box.design);
    if (design == m_designs.end())
        return tr("Without a design");
    const QStringList differences = differencesOf(box, design->second, m_names);
    return differences.isEmpty() ? tr("%1, as designed").arg(fromCore(design->second.name))
                                 : differences.join(u' ');
}

QStringList SheetViewModel::boxNames() const
{
    QStringList names;
    for (const Group &group : m_groups)
        names.append(groupName(group));
    return names;
}

QStringList SheetViewModel::boxCodes() const
{
    QStringList lines;
    for (const Group &group : m_groups) {
        QStringList codes;
        for (const std::size_t box : group.boxes)
            codes.append(fromCore(m_sheet.build.boxes[box].box.code));
        lines.append(
            tr("Boxes: %1. %2")
                .arg(numerals(static_cast<int>(codes.size())), codes.join(QStringLiteral(", "))));
    }
    return lines;
}

QStringList SheetViewModel::boxWorths() const
{
    QStringList worths;
    for (const Group &group : m_groups) {
        const QString worth = moneyWords(group.pence, m_sheet.build.currency);
        worths.append(group.unpriced ? tr("%1, and things without a price").arg(worth) : worth);
    }
    return worths;
}

} // namespace lidlark::mobile
