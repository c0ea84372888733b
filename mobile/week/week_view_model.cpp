#include "week_view_model.h"

#include "core/wording/caution_words.h"
#include "core/wording/day_words.h"
#include "core/wording/reason_words.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/small_drawing.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

void WeekViewModel::setHousehold(Household *household)
{
    m_household = household;
    connect(household, &Household::changed, this, &WeekViewModel::refresh);
    refresh();
}

void WeekViewModel::refresh()
{
    auto week = m_household->week();
    renewRows([&] {
        m_problem = week ? QString() : m_household->sentenceFor(week.error());
        m_week = week ? std::optional(*std::move(week)) : std::nullopt;
    });
    emit refreshed();
}

QStringList WeekViewModel::rowKeys() const
{
    QStringList keys;
    for (int row = 0; row < rowCount(); ++row)
        keys.append(translated(wording::weekdayWord(dayAt(row)->day)));
    return keys;
}

int WeekViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() || !m_week ? 0 : static_cast<int>(m_week->days.size());
}

const usecase::WeekDay *WeekViewModel::dayAt(int row) const
{
    return row >= 0 && row < rowCount() ? &m_week->days[static_cast<std::size_t>(row)] : nullptr;
}

QString WeekViewModel::dayWordsOf(int row) const
{
    if (row == 0)
        return tr("Today");
    return row == 1 ? tr("Tomorrow") : translated(wording::weekdayWord(dayAt(row)->day));
}

QString WeekViewModel::nameOf(const usecase::WeekDay &day) const
{
    if (!day.planned.empty())
        return fromCore(day.planned.front().activity().name);
    if (day.notNow)
        return fromCore(day.notNow->activity->name);
    return day.wish == play::Wish::Free ? tr("Left free") : tr("Nothing left to plan");
}

QString WeekViewModel::noteOf(const usecase::WeekDay &day) const
{
    if (day.played)
        return tr("Played");
    if (day.notNow) {
        const auto &first = day.notNow->reasons.front();
        return safetyText(wording::sentenceFor(first, m_household->catalogue()));
    }
    if (day.planned.empty())
        return {};
    const safety::Admitted &planned = day.planned.front();
    return tr("%1. %2").arg(numerals(tr("%n minute(s)", "", planned.activity().minutes.total())),
                            safetyText(wording::supervisionShort(planned.supervision())));
}

QVariant WeekViewModel::data(const QModelIndex &index, int role) const
{
    const usecase::WeekDay *day = dayAt(index.row());
    if (day == nullptr)
        return {};
    switch (role) {
    case DayWordsRole:
        return dayWordsOf(index.row());
    case NameRole:
        return nameOf(*day);
    case NoteRole:
        return noteOf(*day);
    case DrawingRole:
        return day->planned.empty()
                   ? QString()
                   : smallDrawingOf(day->planned.front().activity(), m_household->catalogue());
    case KeptRole:
        return day->wish == play::Wish::Keep;
    case FreeRole:
        return day->wish == play::Wish::Free;
    case TodayRole:
        return index.row() == 0 && !day->planned.empty() && !day->played;
    case PlayedRole:
        return day->played;
    default:
        return {};
    }
}

QHash<int, QByteArray> WeekViewModel::roleNames() const
{
    return {{DayWordsRole, "dayWords"}, {NameRole, "name"},    {NoteRole, "note"},
            {DrawingRole, "drawing"},   {KeptRole, "kept"},    {FreeRole, "free"},
            {TodayRole, "playable"},    {PlayedRole, "played"}};
}

bool WeekViewModel::somethingOpen() const
{
    return m_week && std::ranges::any_of(m_week->days, [](const usecase::WeekDay &day) {
               return day.wish == play::Wish::Open && !day.planned.empty();
           });
}

bool WeekViewModel::somethingSaid() const
{
    return m_week && std::ranges::any_of(m_week->days, [](const usecase::WeekDay &day) {
               return day.wish != play::Wish::Open;
           });
}

QString WeekViewModel::gap() const
{
    if (!m_week || m_week->proven || m_week->value <= 0)
        return {};
    const int hundredths =
        (100 * (m_week->bound - m_week->value) + m_week->value - 1) / m_week->value;
    return tr("A good week. The very best one could be %1 in a hundred better.")
        .arg(numerals(hundredths));
}

void WeekViewModel::after(const Outcome &outcome)
{
    if (!outcome) {
        m_problem = m_household->sentenceFor(outcome.error());
        emit refreshed();
        return;
    }
    m_household->announce();
}

void WeekViewModel::say(int row, const play::DayWish &wish)
{
    if (const usecase::WeekDay *day = dayAt(row))
        after(m_household->wishForDay(day->day, wish));
}

void WeekViewModel::keep(int row)
{
    const usecase::WeekDay *day = dayAt(row);
    if (day != nullptr && !day->planned.empty())
        say(row, {play::Wish::Keep, day->planned.front().activity().id});
}

void WeekViewModel::leaveFree(int row)
{
    say(row, {play::Wish::Free, {}});
}

void WeekViewModel::giveBack(int row)
{
    say(row, {});
}

void WeekViewModel::another(int row)
{
    const usecase::WeekDay *day = dayAt(row);
    if (day == nullptr)
        return;
    std::set<ActivityId> &seen = m_seen[day->day];
    if (!day->planned.empty())
        seen.insert(day->planned.front().activity().id);
    const auto another = m_household->anotherFor(*m_week, day->day, seen);
    if (!another) {
        seen.clear();
        m_problem = tr("That was all there is for this day. It begins again.");
        emit refreshed();
        return;
    }
    say(row, {play::Wish::Keep, another->activity().id});
}

void WeekViewModel::keepAll()
{
    if (m_week)
        after(m_household->keepWeek(*m_week));
}

void WeekViewModel::giveAllBack()
{
    if (m_week)
        after(m_household->openWeek(*m_week));
}

bool WeekViewModel::begin()
{
    const usecase::WeekDay *day = dayAt(0);
    const auto menu = m_sitting->menu();
    if (day == nullptr || day->planned.empty() || !menu)
        return false;
    const ActivityId &id = day->planned.front().activity().id;
    for (const safety::Admitted &admitted : menu->gated.admitted) {
        if (admitted.activity().id == id)
            return m_playInHand->begin(admitted);
    }
    m_problem = tr("It does not fit who is here just now. See Everything for the reason.");
    emit refreshed();
    return false;
}

} // namespace lidlark::mobile
