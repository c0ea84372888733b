#include "floor_view_model.h"

#include "core/safety/room.h"
#include "core/wording/sentence.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

void FloorViewModel::load()
{
    m_missing.clear();
    m_keepAway.clear();
    const auto family = m_household->family();
    if (family) {
        for (const store::LossRow &loss : family->losses) {
            if (m_household->dangerOfLosing(loss.item) == usecase::LostDanger::None)
                continue;
            const auto same =
                std::find_if(m_missing.begin(), m_missing.end(),
                             [&loss](const Missing &m) { return m.item == loss.item; });
            if (same == m_missing.end())
                m_missing.push_back({loss.item, loss.pieces});
            else
                same->pieces += loss.pieces;
        }
        const child::HomeSheet *home = family->sheet ? &*family->sheet : nullptr;
        const auto company = safety::companyOfHome(home, family->child, m_household->today().day);
        const auto &names =
            company.moutherNames.empty() ? company.underThreeNames : company.moutherNames;
        if (!names.empty())
            m_keepAway = tr("Keep %1 away until found.").arg(fromCore(names.front()));
    }
    emit changed();
}

QString FloorViewModel::nameOf(const Missing &missing) const
{
    const catalogue::ItemKind *kind = m_household->catalogue().item(missing.item);
    if (kind == nullptr)
        return missing.pieces == 1 ? tr("piece") : tr("pieces");
    return fromCore(missing.pieces == 1 ? kind->one : kind->name);
}

QString FloorViewModel::sentenceFor(const Missing &missing) const
{
    if (m_household->dangerOfLosing(missing.item) == usecase::LostDanger::Balloon)
        return tr("A piece of balloon is missing.");
    if (missing.pieces == 1)
        return tr("One %1 is missing.").arg(nameOf(missing));
    return tr("%1 %2 are missing.")
        .arg(fromCore(wording::capital(wording::numberWord(missing.pieces))), nameOf(missing));
}

QString FloorViewModel::lead() const
{
    QStringList sentences;
    for (const Missing &missing : m_missing)
        sentences.append(sentenceFor(missing));
    return sentences.join(u' ');
}

int FloorViewModel::missing() const
{
    return m_missing.empty() ? 0 : m_missing.front().pieces;
}

QString FloorViewModel::question() const
{
    return m_missing.empty() ? QString()
                             : tr("How many turned up: %1?").arg(nameOf(m_missing.front()));
}

bool FloorViewModel::found(int pieces)
{
    if (m_missing.empty() || pieces < 1 || pieces > m_missing.front().pieces)
        return m_missing.empty();
    const Outcome done = m_household->noteFound(m_missing.front().item, pieces);
    if (!done)
        return false;
    m_household->announce();
    load();
    return m_missing.empty();
}

bool FloorViewModel::floorChecked()
{
    const Outcome done = m_household->checkFloor();
    m_household->announce();
    return done.ok();
}

} // namespace lidlark::mobile
