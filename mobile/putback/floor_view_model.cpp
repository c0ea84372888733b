#include "floor_view_model.h"

#include "core/safety/room.h"
#include "core/wording/sentence.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

void FloorViewModel::load()
{
    m_missing = 0;
    m_item = {};
    m_keepAway.clear();
    const auto family = m_household->family();
    if (family) {
        for (const store::LossRow &loss : family->losses) {
            m_missing += loss.pieces;
            if (m_item.empty())
                m_item = loss.item;
        }
        const child::HomeSheet *home = family->sheet ? &*family->sheet : nullptr;
        const auto company = safety::companyOfHome(home, family->child, m_household->today().day);
        const auto &names =
            company.moutherNames.empty() ? company.underThreeNames : company.moutherNames;
        if (!names.empty())
            m_keepAway = tr("Keep %1 away until found.").arg(fromCore(names.front()));
    }
    const catalogue::ItemKind *kind = m_household->catalogue().item(m_item);
    if (m_missing == 1)
        m_lead = tr("One %1 is missing.").arg(fromCore(kind != nullptr ? kind->one : "piece"));
    else
        m_lead = tr("%1 %2 are missing.")
                     .arg(fromCore(wording::capital(wording::numberWord(m_missing))),
                          fromCore(kind != nullptr ? kind->name : "pieces"));
    emit changed();
}

bool FloorViewModel::foundOne()
{
    const Outcome done = m_household->noteFound(m_item, 1);
    if (!done)
        return false;
    m_household->announce();
    load();
    return m_missing == 0;
}

bool FloorViewModel::floorChecked()
{
    const Outcome done = m_household->checkFloor();
    m_household->announce();
    return done.ok();
}

} // namespace lidlark::mobile
