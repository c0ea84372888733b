#include "video_plan_view_model.h"

#include "session_words.h"

#include "core/wording/day_words.h"
#include "mobile/bridge/letters.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"
#include "mobile/bridge/time_words.h"

#include <algorithm>

namespace lidlark::mobile {

namespace {

constexpr int minutesOfQuarter = 15;
constexpr int quartersOfDay = 96;

} // namespace

void VideoPlanViewModel::setHousehold(Household *household)
{
    m_household = household;
    connect(household, &Household::changed, this, &VideoPlanViewModel::load);
    load();
}

void VideoPlanViewModel::load()
{
    renewRows([this] { read(); });
    emit loaded();
}

Day VideoPlanViewModel::day() const
{
    return m_household->today().day + m_inDays;
}

void VideoPlanViewModel::read()
{
    if (!m_household->isOpen())
        return;
    auto choices = videoChoicesOf(*m_household, day());
    m_problem = choices ? QString() : m_household->sentenceFor(choices.error());
    m_choices.reset();
    m_sessions.clear();
    if (!choices) {
        m_places.clear();
        return;
    }
    m_choices.emplace(*std::move(choices));
    if (m_placesOf != day()) {
        m_placesOf = day();
        m_places.clear();
        for (const rotation::ArcPart &part : m_choices->suggested.parts)
            m_places.push_back({part.place, part.offer.admitted.activity().id});
        if (m_choices->suggested.spare)
            m_places.push_back({std::nullopt, m_choices->suggested.spare->admitted.activity().id});
    }
    auto sessions = videoSessionsOf(*m_household);
    if (sessions)
        m_sessions = *std::move(sessions);
}

std::vector<ActivityId> VideoPlanViewModel::fitting(const Place &place) const
{
    std::vector<ActivityId> ids;
    for (const safety::Admitted &admitted : m_choices->open) {
        const child::Child &child = m_choices->family.child;
        const auto stands = [&](rotation::ArcPlace at) {
            return rotation::mayStandAt(at, admitted, child);
        };
        const bool fits =
            place.at ? stands(*place.at)
                     : stands(rotation::ArcPlace::SettleIn) || stands(rotation::ArcPlace::Work);
        const ActivityId &id = admitted.activity().id;
        const bool elsewhere = std::ranges::any_of(m_places, [&](const Place &other) {
            return other.activity == id && id != place.activity;
        });
        if (fits && !elsewhere)
            ids.push_back(id);
    }
    return ids;
}

QStringList VideoPlanViewModel::rowKeys() const
{
    QStringList keys;
    for (const Place &place : m_places)
        keys.append(place.at ? fromCore(rotation::arcPlaceNames.of(*place.at))
                             : QStringLiteral("spare"));
    return keys;
}

int VideoPlanViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_places.size());
}

QVariant VideoPlanViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount() || !m_choices)
        return {};
    const Place &place = m_places[static_cast<std::size_t>(index.row())];
    const catalogue::Activity *activity = m_household->catalogue().activity(place.activity);
    switch (role) {
    case PlaceRole:
        return place.at ? placeWords(*place.at) : tr("Spare, if something is missing");
    case NameRole:
        return activityName(*m_household, place.activity);
    case DrawingRole:
        return fromCore(activity != nullptr ? activity->picture.drawing : std::string());
    case NoteRole:
        return activity != nullptr
                   ? tr("%1 minutes. %2.")
                         .arg(numerals(activity->minutes.total()), cameraWords(activity->view))
                   : QString();
    case OthersRole:
        return fitting(place).size() > 1;
    default:
        return {};
    }
}

QHash<int, QByteArray> VideoPlanViewModel::roleNames() const
{
    return {{PlaceRole, "place"},
            {NameRole, "name"},
            {DrawingRole, "drawing"},
            {NoteRole, "note"},
            {OthersRole, "others"}};
}

// A screen's bindings may read these before the required properties are there.

QString VideoPlanViewModel::dayWords() const
{
    if (m_household == nullptr)
        return {};
    return tr("%1, %2").arg(translated(wording::weekdayWord(day())),
                            translated(wording::dateWords(day())));
}

QString VideoPlanViewModel::timeWords() const
{
    return lidlark::mobile::timeWords(m_quarter * minutesOfQuarter);
}

void VideoPlanViewModel::setInDays(int days)
{
    m_inDays = std::clamp(days, 0, lastDay());
    if (m_household != nullptr)
        load();
}

void VideoPlanViewModel::setQuarter(int quarter)
{
    m_quarter = std::clamp(quarter, 0, quartersOfDay - 1);
    emit loaded();
}

QString VideoPlanViewModel::listNote() const
{
    if (!m_choices)
        return {};
    const QString revision = numerals(m_choices->revision);
    return m_choices->awaitsConfirmation
               ? tr("Lid list %1 is out and not yet confirmed: only what it shares with the one "
                    "before can be planned.")
                     .arg(revision)
               : tr("From lid list %1.").arg(revision);
}

QStringList VideoPlanViewModel::planned() const
{
    QStringList lines;
    for (const usecase::VideoSession &session : m_sessions) {
        QStringList names;
        for (const workbench::SessionPart &part : session.parts)
            names.append(isolated(activityName(*m_household, part.played.value_or(part.planned))));
        lines.append(tr("%1: %2").arg(whenWords(session.plan.day, session.plan.minuteOfDay),
                                      names.join(tr(", "))));
    }
    return lines;
}

workbench::VideoPlan VideoPlanViewModel::plan() const
{
    workbench::VideoPlan plan;
    plan.day = day();
    plan.minuteOfDay = m_quarter * minutesOfQuarter;
    for (const Place &place : m_places)
        (place.at ? plan.activities : plan.spares).push_back(place.activity);
    return plan;
}

bool VideoPlanViewModel::canSend() const
{
    return m_choices &&
           std::ranges::any_of(m_places, [](const Place &place) { return place.at.has_value(); });
}

void VideoPlanViewModel::another(int row)
{
    if (row < 0 || row >= rowCount() || !m_choices)
        return;
    Place &place = m_places[static_cast<std::size_t>(row)];
    const auto ids = fitting(place);
    if (ids.empty())
        return;
    const auto now = std::ranges::find(ids, place.activity);
    const auto next =
        now == ids.end() || std::next(now) == ids.end() ? ids.begin() : std::next(now);
    place.activity = *next;
    load();
}

bool VideoPlanViewModel::send()
{
    if (!canSend())
        return false;
    const auto problems = problemsOf(*m_household, plan(), *m_choices);
    const Outcome sent = problems.empty() ? planVideo(*m_household, plan())
                                          : Outcome(Error{ErrorCode::Invalid, "activity"});
    if (sent) {
        m_problem.clear();
        m_household->announce();
        return true;
    }
    m_problem = problems.empty() ? m_household->sentenceFor(sent.error())
                                 : problemWords(*m_household, problems.front());
    emit loaded();
    return false;
}

void VideoPlanViewModel::callOff(int line)
{
    if (line < 0 || line >= static_cast<int>(m_sessions.size()))
        return;
    const Outcome done =
        callOffVideo(*m_household, m_sessions[static_cast<std::size_t>(line)].plan.id);
    m_problem = done ? QString() : m_household->sentenceFor(done.error());
    if (done)
        m_household->announce();
    else
        emit loaded();
}

} // namespace lidlark::mobile
