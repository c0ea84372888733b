#include "noted_view_model.h"

#include "mobile/bridge/noted_lines.h"

#include <algorithm>

namespace lidlark::mobile {

void NotedViewModel::setHousehold(Household *household)
{
    m_household = household;
    connect(household, &Household::changed, this, &NotedViewModel::load);
    load();
}

/// The same rows in the same order are told anew in place: what is looked at does not jump.
void NotedViewModel::load()
{
    std::vector<usecase::Noted> noted = m_household->notedToday();
    const bool sameRows =
        std::equal(noted.begin(), noted.end(), m_noted.begin(), m_noted.end(),
                   [](const auto &a, const auto &b) { return a.events == b.events; });
    if (sameRows) {
        m_noted = std::move(noted);
        if (!m_noted.empty())
            emit dataChanged(index(0), index(rowCount() - 1));
    } else {
        beginResetModel();
        m_noted = std::move(noted);
        endResetModel();
    }
    emit loaded();
}

int NotedViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_noted.size());
}

QVariant NotedViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const usecase::Noted &noted = m_noted[static_cast<std::size_t>(index.row())];
    switch (role) {
    case WordsRole:
        return notedLines(noted, *m_household).join(u'\n');
    case WhoRole:
        return notedBy(noted);
    case TakenBackRole:
        return noted.takenBack;
    case MineRole:
        return noted.mine;
    default:
        return {};
    }
}

QHash<int, QByteArray> NotedViewModel::roleNames() const
{
    return {
        {WordsRole, "words"}, {WhoRole, "who"}, {TakenBackRole, "takenBack"}, {MineRole, "mine"}};
}

bool NotedViewModel::takeBack(int row)
{
    return change(row, &Household::takeBack);
}

bool NotedViewModel::putInAgain(int row)
{
    return change(row, &Household::putInAgain);
}

bool NotedViewModel::change(int row, Outcome (Household::*how)(const std::string &))
{
    if (row < 0 || row >= rowCount())
        return false;
    const auto &events = m_noted[static_cast<std::size_t>(row)].events;
    const Outcome done = (m_household->*how)(journal::identityOf(events.front()));
    m_problem = done ? QString() : m_household->sentenceFor(done.error());
    if (done)
        m_household->announce();
    else
        emit loaded();
    return done.ok();
}

} // namespace lidlark::mobile
