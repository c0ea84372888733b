#include "coaching_view_model.h"

#include "core/wording/caseload_words.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/workbench_desk.h"

namespace lidlark::mobile {

void CoachingViewModel::setHousehold(Household *household)
{
    m_household = household;
    load();
}

void CoachingViewModel::load()
{
    renewRows([this] {
        auto ticks = coachingTicks(*m_household);
        m_problem = ticks ? QString() : m_household->sentenceFor(ticks.error());
        m_ticks = ticks ? *std::move(ticks) : std::vector<bool>();
    });
    emit loaded();
}

QStringList CoachingViewModel::rowKeys() const
{
    QStringList keys;
    for (int row = 0; row < rowCount(); ++row)
        keys.append(QString::number(row));
    return keys;
}

int CoachingViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_ticks.size());
}

QVariant CoachingViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const auto at = static_cast<std::size_t>(index.row());
    if (role == WordsRole)
        return translated(wording::coachingLines().at(at));
    return role == DoneRole ? QVariant(static_cast<bool>(m_ticks[at])) : QVariant();
}

QHash<int, QByteArray> CoachingViewModel::roleNames() const
{
    return {{WordsRole, "words"}, {DoneRole, "done"}};
}

void CoachingViewModel::tick(int row, bool done)
{
    const Outcome kept = tickCoaching(*m_household, row, done);
    load();
    if (!kept) {
        m_problem = m_household->sentenceFor(kept.error());
        emit loaded();
    }
}

} // namespace lidlark::mobile
