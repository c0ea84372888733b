#include "core/usecase/keep_box.h"
#include "core/usecase/take_out.h"
#include "core/wording/emergency_words.h"
#include "mobile/bridge/household.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

Outcome Household::countBox(const std::map<ItemId, int> &counts)
{
    return usecase::countBox(*m_workplace, toCore(m_child), {}, counts);
}

Outcome Household::sayPlace(const std::string &place, const std::string &words)
{
    return usecase::sayPlace(*m_workplace, toCore(m_child), place, words);
}

Outcome Household::noteFound(const ItemId &item, int pieces)
{
    return usecase::noteFound(*m_workplace, toCore(m_child), {}, item, pieces);
}

Outcome Household::checkFloor()
{
    return usecase::checkFloor(*m_workplace, toCore(m_child), {});
}

std::set<ItemId> Household::itemsToTakeOut()
{
    std::set<ItemId> items;
    if (const auto family = this->family()) {
        for (const usecase::TakeOut &line : usecase::takeOutOf(*family, m_catalogue))
            items.insert(line.item);
    }
    return items;
}

QString Household::takeOutLead()
{
    const auto family = this->family();
    QStringList names;
    if (family) {
        for (const usecase::TakeOut &line : usecase::takeOutOf(*family, m_catalogue))
            names.append(fromCore(m_catalogue.item(line.item)->name));
    }
    return names.isEmpty() ? QString()
                           : tr("Out of the house, then wash hands: %1.").arg(names.join(u", "));
}

QString Household::takeOutText()
{
    const auto family = this->family();
    QStringList names;
    if (!family || usecase::takeOutOf(*family, m_catalogue).empty())
        return {};
    for (const usecase::TakeOut &line : usecase::takeOutOf(*family, m_catalogue)) {
        if (const auto *kind = line.instead ? m_catalogue.item(*line.instead) : nullptr)
            names.append(fromCore(kind->name));
    }
    const auto urgent = wording::emergencyLines(wording::Emergency::Reaction, {}).front();
    const QString asked =
        names.isEmpty()
            ? QString()
            : tr("Ask your therapist for these in their place: %1.").arg(names.join(u", "));
    return QStringList{asked, translated(urgent)}.join(u' ').trimmed();
}

} // namespace lidlark::mobile
