#include "report_view_model.h"

#include "core/wording/money_words.h"
#include "core/wording/summary_words.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"
#include "mobile/bridge/workbench_desk.h"

namespace lidlark::mobile {

void ReportViewModel::setHousehold(Household *household)
{
    m_household = household;
    connect(household, &Household::changed, this, &ReportViewModel::load);
    load();
}

void ReportViewModel::load()
{
    m_perUse.clear();
    const auto cost = useCostOf(*m_household);
    m_problem = cost ? QString() : m_household->sentenceFor(cost.error());
    if (cost && cost->cost) {
        m_perUse = fromCore(wording::moneyText(cost->cost->perUse.pence, cost->currency));
        m_boxes = static_cast<int>(cost->cost->boxes);
        m_leftOut = cost->leftOut;
        m_time = translated(wording::summaryTime(cost->since, cost->until));
    }
    emit loaded();
}

} // namespace lidlark::mobile
