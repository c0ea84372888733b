#include "video_session_view_model.h"

#include "session_words.h"

#include "mobile/bridge/letters.h"
#include "mobile/bridge/new_list.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/text.h"
#include "mobile/bridge/time_words.h"

namespace lidlark::mobile {

namespace {

QString firstLine(const std::vector<catalogue::Grading> &lines)
{
    return lines.empty() ? QString() : fromCore(lines.front().text);
}

} // namespace

void VideoSessionViewModel::setHousehold(Household *household)
{
    m_household = household;
    connect(household, &Household::changed, this, &VideoSessionViewModel::load);
    load();
}

void VideoSessionViewModel::load()
{
    renewRows([this] { read(); });
    emit loaded();
}

void VideoSessionViewModel::read()
{
    m_session.reset();
    m_beginnings.clear();
    if (!m_household->isOpen())
        return;
    auto sessions = videoSessionsOf(*m_household);
    m_problem = sessions ? QString() : m_household->sentenceFor(sessions.error());
    if (!sessions || sessions->empty())
        return;
    m_session = std::move(sessions->front());
    std::vector<int> minutes;
    for (std::size_t at = 0; at < m_session->parts.size(); ++at) {
        const catalogue::Activity *activity = playedAt(at);
        minutes.push_back(activity != nullptr ? activity->minutes.total() : 0);
    }
    m_beginnings = workbench::beginningsOf(minutes);
}

const catalogue::Activity *VideoSessionViewModel::playedAt(std::size_t at) const
{
    const workbench::SessionPart &part = m_session->parts[at];
    return m_household->catalogue().activity(part.played.value_or(part.planned));
}

QStringList VideoSessionViewModel::rowKeys() const
{
    QStringList keys;
    if (m_session) {
        for (const workbench::SessionPart &part : m_session->parts)
            keys.append(fromCore(m_session->plan.id + part.planned.value));
    }
    return keys;
}

int VideoSessionViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() || !m_session ? 0 : static_cast<int>(m_session->parts.size());
}

QString VideoSessionViewModel::noteOf(std::size_t at) const
{
    const workbench::SessionPart &part = m_session->parts[at];
    const catalogue::Activity *activity = playedAt(at);
    QStringList lines;
    if (!part.missing.empty())
        lines.append(
            part.played
                ? tr("In place of %1: not there: %2.")
                      .arg(isolated(activityName(*m_household, part.planned)),
                           itemNames(*m_household, part.missing))
                : tr("Not there: %1. No spare fits.").arg(itemNames(*m_household, part.missing)));
    if (activity != nullptr)
        lines.append(tr("%1.").arg(cameraWords(activity->view)));
    return lines.join(u' ');
}

QVariant VideoSessionViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const auto at = static_cast<std::size_t>(index.row());
    const catalogue::Activity *activity = playedAt(at);
    switch (role) {
    case TimeRole: {
        const int minute = m_session->plan.minuteOfDay + m_beginnings[at];
        return timeWords(minute);
    }
    case NameRole:
        return activityName(*m_household,
                            m_session->parts[at].played.value_or(m_session->parts[at].planned));
    case DrawingRole:
        return fromCore(activity != nullptr ? activity->picture.drawing : std::string());
    case NoteRole:
        return noteOf(at);
    case EasierRole:
        return activity != nullptr ? firstLine(activity->easier) : QString();
    case HarderRole:
        return activity != nullptr ? firstLine(activity->harder) : QString();
    default:
        return {};
    }
}

QHash<int, QByteArray> VideoSessionViewModel::roleNames() const
{
    return {{TimeRole, "time"}, {NameRole, "name"},     {DrawingRole, "drawing"},
            {NoteRole, "note"}, {EasierRole, "easier"}, {HarderRole, "harder"}};
}

QString VideoSessionViewModel::when() const
{
    return m_session ? whenWords(m_session->plan.day, m_session->plan.minuteOfDay) : QString();
}

QString VideoSessionViewModel::family() const
{
    if (!m_session)
        return {};
    std::vector<ItemId> open;
    std::vector<ItemId> missing;
    for (const workbench::ThingNeeded &thing : m_session->things) {
        if (!thing.said)
            open.push_back(thing.item);
        else if (!thing.said->here)
            missing.push_back(thing.item);
    }
    QStringList lines;
    if (!missing.empty())
        lines.append(tr("Not there: %1.").arg(itemNames(*m_household, missing)));
    if (!open.empty())
        lines.append(tr("Not yet looked for: %1.").arg(itemNames(*m_household, open)));
    return lines.isEmpty() ? tr("They have everything ready.") : lines.join(u' ');
}

QString VideoSessionViewModel::ownBox() const
{
    QStringList lines;
    if (!m_session)
        return {};
    for (const workbench::ThingNeeded &thing : m_session->things) {
        const QString name = itemName(*m_household, thing.item);
        lines.append(thing.pieces > 1 ? tr("%1: %2").arg(name, numerals(thing.pieces)) : name);
    }
    return lines.join(tr(", "));
}

QString VideoSessionViewModel::note() const
{
    return m_session && m_session->listHasChanged
               ? tr("The lid list has changed since this was planned: look the plan over.")
               : QString();
}

} // namespace lidlark::mobile
