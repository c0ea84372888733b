#include "mobile/bridge/clinic_desk.h"

#include "core/workbench/handed.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

QString clinicDrawing(Household &household, const ItemId &item)
{
    const auto *kind = household.catalogue().item(workbench::kindOf(item));
    return kind != nullptr ? fromCore(kind->drawing) : QStringLiteral("item-box");
}

QString clinicAnswer(Household &household, const Outcome &outcome)
{
    if (!outcome)
        return household.sentenceFor(outcome.error());
    household.announce();
    return {};
}

} // namespace lidlark::mobile
