#include "have_ready_view_model.h"

#include "session_words.h"

#include "mobile/bridge/letters.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

void HaveReadyViewModel::setHousehold(Household *household)
{
    m_household = household;
    connect(household, &Household::changed, this, &HaveReadyViewModel::load);
    load();
}

void HaveReadyViewModel::load()
{
    renewRows([this] { readSession(); });
    emit loaded();
}

void HaveReadyViewModel::readSession()
{
    m_session.reset();
    if (!m_household->isOpen())
        return;
    auto sessions = videoSessionsOf(*m_household);
    m_problem = sessions ? QString() : m_household->sentenceFor(sessions.error());
    if (sessions && !sessions->empty())
        m_session = std::move(sessions->front());
}

QStringList HaveReadyViewModel::rowKeys() const
{
    QStringList keys;
    if (m_session) {
        for (const workbench::ThingNeeded &thing : m_session->things)
            keys.append(fromCore(m_session->plan.id + thing.item.value));
    }
    return keys;
}

int HaveReadyViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() || !m_session ? 0 : static_cast<int>(m_session->things.size());
}

QString HaveReadyViewModel::headingOf(std::size_t at) const
{
    const auto &things = m_session->things;
    const bool box = things[at].source == catalogue::Source::Box;
    if (at > 0 && things[at - 1].source == things[at].source)
        return {};
    return box ? tr("From the box") : tr("From the house");
}

QString HaveReadyViewModel::noteOf(const workbench::ThingNeeded &thing) const
{
    QStringList parts;
    if (thing.pieces > 1)
        parts.append(tr("%1 pieces").arg(numerals(thing.pieces)));
    if (thing.forSpare)
        parts.append(tr("in case something is missing"));
    return parts.join(tr(", "));
}

QVariant HaveReadyViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const auto at = static_cast<std::size_t>(index.row());
    const workbench::ThingNeeded &thing = m_session->things[at];
    const catalogue::ItemKind *kind = m_household->catalogue().item(thing.item);
    switch (role) {
    case ItemIdRole:
        return fromCore(thing.item.value);
    case HeadingRole:
        return headingOf(at);
    case NameRole:
        return itemName(*m_household, thing.item);
    case DrawingRole:
        return fromCore(kind != nullptr ? kind->drawing : std::string());
    case NoteRole:
        return noteOf(thing);
    case HereRole:
        return thing.said && thing.said->here;
    case MissingRole:
        return thing.said && !thing.said->here;
    default:
        return {};
    }
}

QHash<int, QByteArray> HaveReadyViewModel::roleNames() const
{
    return {{ItemIdRole, "itemId"},   {HeadingRole, "heading"}, {NameRole, "name"},
            {DrawingRole, "drawing"}, {NoteRole, "note"},       {HereRole, "here"},
            {MissingRole, "missing"}};
}

QString HaveReadyViewModel::when() const
{
    return m_session ? whenWords(m_session->plan.day, m_session->plan.minuteOfDay) : QString();
}

QStringList HaveReadyViewModel::parts() const
{
    QStringList lines;
    if (!m_session)
        return lines;
    for (const workbench::SessionPart &part : m_session->parts) {
        const QString planned = isolated(activityName(*m_household, part.planned));
        if (part.missing.empty())
            lines.append(planned);
        else if (part.played)
            lines.append(tr("%1, in place of %2")
                             .arg(isolated(activityName(*m_household, *part.played)), planned));
        else
            lines.append(tr("%1: something is missing").arg(planned));
    }
    return lines;
}

QString HaveReadyViewModel::note() const
{
    return m_session && m_session->listHasChanged ? tr("The lid list has changed since this was "
                                                       "planned. Your therapist sees that too.")
                                                  : QString();
}

void HaveReadyViewModel::say(int row, bool here)
{
    if (row < 0 || row >= rowCount())
        return;
    const workbench::ThingNeeded &thing = m_session->things[static_cast<std::size_t>(row)];
    if (thing.said && thing.said->here == here)
        return;
    const Outcome done = sayAtHand(*m_household, m_session->plan.id, thing.item, here);
    m_problem = done ? QString() : m_household->sentenceFor(done.error());
    if (done)
        m_household->announce();
    else
        emit loaded();
}

} // namespace lidlark::mobile
