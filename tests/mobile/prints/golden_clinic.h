#pragma once

#include "core/usecase/keep_build.h"
#include "core/usecase/keep_design.h"
#include "core/usecase/keep_supply.h"
#include "tests/core/workbench/golden_build.h"

#include <set>

namespace lidlark::test {

/// The golden case of job.md 2.8 (golden_build.h) as a clinic keeps it: one design, and every other
/// kind of box departs from it with its reason.
class GoldenClinic
{
public:
    explicit GoldenClinic(usecase::Workplace &morven) : m_morven(morven) {}

    workbench::BuildId keep()
    {
        for (const workbench::Supply &supply : golden::supplies()) {
            workbench::KeptSupply kept{supply, {}, {}, {}};
            kept.freeOf = {child::Avoided::Latex, child::Avoided::Wheat};
            if (supply.item == ItemId{"bands"})
                kept.supply.offers.front().shop = "Harbour Stores"; // invented
            must(usecase::keepSupply(m_morven, kept));
        }
        const workbench::BuildBox standard = golden::box("standard", "");
        m_design = *usecase::keepDesign(m_morven, {{}, "Standard", standard.parts});
        m_build = *usecase::startBuild(
            m_morven, {{}, "Hallasay boxes", *dayFrom({2027, 1, 4}), "GBP", 10, {}});
        for (int i = 0; i < 16; ++i)
            keepBox("standard", i == 0 ? "Fin" : "");
        for (int i = 0; i < 3; ++i)
            keepBox("standard", "", workbench::Hand::Left);
        for (int i = 0; i < 2; ++i)
            keepBox("latex_avoiding", i == 0 ? "Anya" : "", {}, {child::Avoided::Latex});
        keepBox("wheat_free", "", {}, {child::Avoided::Wheat});
        for (int i = 0; i < 3; ++i)
            keepBox("mouthing", i == 0 ? "Lewis" : "");
        return m_build;
    }

private:
    static void must(const Outcome &outcome)
    {
        if (!outcome)
            qFatal("%s", outcome.error().detail.c_str());
    }

    /// What stands in the place of what, as far as one thing does.
    static ItemId insteadOf(const ItemId &item)
    {
        static const std::map<ItemId, ItemId> places{{{"loops"}, {"bands"}},
                                                     {{"pouch"}, {"ball"}},
                                                     {{"scarf"}, {"balloon"}},
                                                     {{"ricedough"}, {"dough"}},
                                                     {{"chunky"}, {"crayons"}}};
        const auto found = places.find(item);
        return found != places.end() ? found->second : ItemId();
    }

    void keepBox(const QString &kind, const std::string &whose,
                 workbench::Hand hand = workbench::Hand::Unsaid,
                 const std::set<child::Avoided> &avoids = {})
    {
        workbench::KeptBox kept;
        kept.box = golden::box(kind, "K" + std::to_string(++m_boxes));
        if (hand == workbench::Hand::Left)
            kept.box = golden::leftHanded(kept.box);
        kept.box.whose = whose;
        kept.box.design = m_design;
        kept.personal.hand = hand;
        kept.personal.avoids = avoids;
        for (workbench::BoxPart &part : kept.box.parts) {
            if (const ItemId other = insteadOf(part.item); !other.empty())
                part.insteadOf = other;
        }
        if (kind == QLatin1String("mouthing")) {
            for (const shipped::Row &row : golden::rows()) {
                if (row.at("standard") != row.at("mouthing"))
                    kept.personal.departures.push_back(
                        {{row.at("item").toStdString()}, workbench::Why::Mouthing, {}});
            }
        }
        must(usecase::keepBox(m_morven, m_build, kept));
    }

    usecase::Workplace &m_morven;
    workbench::DesignId m_design;
    workbench::BuildId m_build;
    int m_boxes = 0;
};

} // namespace lidlark::test
