#include "use_view_model.h"

#include "item_words.h"

#include "core/wording/outlook_words.h"
#include "core/wording/use_words.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

namespace {

constexpr int weeksShown = 8;

} // namespace

void UseViewModel::setHousehold(Household *household)
{
    m_household = household;
    connect(household, &Household::changed, this, &UseViewModel::load);
    load();
}

QString UseViewModel::itemId() const
{
    return fromCore(m_item.value);
}

void UseViewModel::setItemId(const QString &itemId)
{
    m_item = {toCore(itemId)};
    load();
}

bool UseViewModel::anyUse() const
{
    return std::any_of(m_pieces.begin(), m_pieces.end(), [](int pieces) { return pieces > 0; });
}

void UseViewModel::load()
{
    if (m_household == nullptr || m_item.empty())
        return;
    m_pieces.clear();
    m_labels.clear();
    m_words.clear();
    m_lasting.clear();
    if (const auto item = m_household->boxItem(m_item)) {
        readWeeks(*item);
        readOutlook(*item);
    }
    emit loaded();
}

void UseViewModel::readWeeks(const usecase::BoxItem &item)
{
    std::vector<wording::WeekPieces> weeks;
    for (const usecase::WeekOfUse &week :
         usecase::weeksOfUse(item.row, m_household->today().day, weeksShown)) {
        weeks.push_back({week.first, week.pieces});
        m_pieces.append(week.pieces);
    }
    for (const wording::Sentence &label : wording::weekLabels(weeks))
        m_labels.append(translated(label));
    QStringList sentences;
    for (const wording::Sentence &sentence : wording::useWords(toCore(itemNameInside(item)), weeks))
        sentences.append(translated(sentence));
    m_words = sentences.join(u' ');
}

void UseViewModel::readOutlook(const usecase::BoxItem &item)
{
    const auto outlook = m_household->outlook(item);
    if (!outlook)
        return;
    const auto lasts = wording::lastingWords(outlook->forecast);
    if (lasts) {
        m_lasting.append(translated(*lasts));
        if (const auto round = wording::roundWords(outlook->forecast))
            m_lasting.append(translated(*round));
        m_lasting.append(translated(wording::restsOnWords(outlook->forecast)));
    }
    if (outlook->keeping)
        m_lasting.append(translated(
            wording::keepingWords(outlook->keeping->earliestDays, outlook->keeping->latestDays)));
}

} // namespace lidlark::mobile
