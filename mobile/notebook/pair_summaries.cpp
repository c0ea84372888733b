#include "pair_summaries.h"

#include "core/wording/pair_words.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

void PairSummaries::setHousehold(Household *household)
{
    m_household = household;
    connect(household, &Household::changed, this, &PairSummaries::load);
    load();
}

void PairSummaries::load()
{
    const auto family = m_household->family();
    beginResetModel();
    m_summaries.clear();
    if (family) {
        add(*family, checkin::ShownBy::Child);
        add(*family, checkin::ShownBy::AdultGuess);
    }
    endResetModel();
    emit loaded();
}

void PairSummaries::add(const usecase::Family &family, checkin::ShownBy by)
{
    for (const auto &[id, pairs] : checkin::pairsByActivity(family.checkIns, by)) {
        QStringList lines;
        for (const auto &line : wording::pairSummary(pairs, by, family.child.alias))
            lines.append(translated(line));
        if (lines.isEmpty())
            continue;
        const catalogue::Activity *activity = m_household->catalogue().activity(id);
        m_summaries.push_back(
            {fromCore(activity != nullptr ? activity->name : id.value), lines.join(u' ')});
    }
}

int PairSummaries::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_summaries.size());
}

QVariant PairSummaries::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const Summary &summary = m_summaries[static_cast<std::size_t>(index.row())];
    if (role == NameRole)
        return summary.name;
    return role == TextRole ? summary.text : QVariant();
}

QHash<int, QByteArray> PairSummaries::roleNames() const
{
    return {{NameRole, "name"}, {TextRole, "text"}};
}

} // namespace lidlark::mobile
