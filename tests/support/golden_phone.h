#pragma once

#include "tests/support/clinic.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace lidlark::test {

/// The golden case of reference/job.md 2.8 (tests/data/workbench/golden_build.json), kept on a
/// therapist's phone through the use cases.
class GoldenPhone
{
public:
    explicit GoldenPhone(usecase::Workplace workplace) : m_workplace(workplace)
    {
        QFile file(qEnvironmentVariable("LIDLARK_SOURCE_DIR") +
                   QStringLiteral("/tests/data/workbench/golden_build.json"));
        if (file.open(QIODevice::ReadOnly))
            m_json = QJsonDocument::fromJson(file.readAll()).object();
    }

    /// @returns how many supplies.
    int keepSupplies()
    {
        int kept = 0;
        for (const QJsonValue &value : m_json["items"].toArray()) {
            const QJsonObject item = value.toObject();
            workbench::KeptSupply supply;
            supply.supply = {{item["id"].toString().toStdString()},
                             item["name"].toString().toStdString(),
                             {},
                             item["in_stock"].toInt(),
                             item["used_up"].toBool()};
            for (const QJsonValue &one : item["offers"].toArray())
                supply.supply.offers.push_back({one["shop"].toString().toStdString(),
                                                one["pieces"].toInt(), one["pence"].toInt(),
                                                "GBP"});
            if (supply.supply.item == ItemId{"box"}) // looked at: plain plastic
                supply.freeOf = {child::Avoided::Latex, child::Avoided::Wheat};
            kept += usecase::keepSupply(m_workplace, supply).ok() ? 1 : 0;
        }
        return kept;
    }

    workbench::Design design()
    {
        workbench::Design design{{}, "Standard box", {}};
        const QJsonObject parts = m_json["designs"][0]["parts"].toObject();
        for (const QJsonValue &item : m_json["items"].toArray()) {
            const QString id = item["id"].toString();
            if (parts.contains(id))
                design.parts.push_back({{id.toStdString()}, parts[id].toInt(), {}});
        }
        return design;
    }

    workbench::DesignId keepDesign()
    {
        const auto id = usecase::keepDesign(m_workplace, design());
        return id ? *id : workbench::DesignId();
    }

    /// All 25 boxes, K1 and on. @returns how many were kept.
    int keepBoxes(const workbench::BuildId &build, const workbench::DesignId &design)
    {
        int kept = 0;
        for (const QJsonValue &kind : m_json["boxes"].toArray()) {
            for (int i = 0; i < kind["times"].toInt(1); ++i) {
                const std::string code = "K" + std::to_string(++m_boxes);
                kept +=
                    usecase::keepBox(m_workplace, build, boxOf(kind.toObject(), code, design)).ok()
                        ? 1
                        : 0;
            }
        }
        return kept;
    }

    /// Supplies, the design, and a build of all boxes.
    Table keepAll()
    {
        (void)keepSupplies();
        const workbench::DesignId design = keepDesign();
        const auto build = usecase::startBuild(
            m_workplace, {{}, "Spring boxes", *dayFrom({2027, 1, 4}), "GBP", 10, {}});
        (void)keepBoxes(*build, design);
        return {design, *build};
    }

private:
    workbench::KeptBox boxOf(const QJsonObject &kind, const std::string &code,
                             const workbench::DesignId &design)
    {
        workbench::KeptBox kept{{code, {}, design, this->design().parts}, {}, false};
        const QJsonObject changes = kind["changes"].toObject();
        const QJsonObject standsFor = kind["instead_of"].toObject();
        for (const QString &item : changes.keys()) {
            const ItemId id{item.toStdString()};
            if (changes[item].toInt() == 0)
                std::erase_if(kept.box.parts, [&](const auto &part) { return part.item == id; });
            else
                kept.box.parts.push_back(
                    {id, changes[item].toInt(), {standsFor[item].toString().toStdString()}});
        }
        const QString name = kind["code"].toString();
        if (name.contains("LEFT"))
            kept.personal.hand = workbench::Hand::Left;
        if (name.contains("LATEX"))
            kept.personal.avoids = {child::Avoided::Latex};
        if (name.contains("WHEAT"))
            kept.personal.avoids = {child::Avoided::Wheat};
        for (const QString &item : changes.keys()) {
            if (name.contains("MOUTH"))
                kept.personal.departures.push_back(
                    {{item.toStdString()}, workbench::Why::Mouthing, {}});
        }
        return kept;
    }

    usecase::Workplace m_workplace;
    QJsonObject m_json;
    int m_boxes = 0;
};

} // namespace lidlark::test
