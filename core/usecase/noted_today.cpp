#include "core/usecase/noted_today.h"

#include "core/child/home_facts.h"
#include "core/journal/fields.h"
#include "core/journal/seen.h"
#include "core/journal/take_backs.h"
#include "core/play/play_events.h"
#include "core/store/box_repository.h"
#include "core/store/home_repository.h"
#include "core/store/recording.h"
#include "core/usecase/notes_lane.h"
#include "core/usecase/said_about.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace lidlark::usecase {

namespace {

using journal::Event;
using journal::Fields;
using journal::Kind;
using journal::Lane;
using journal::LaneKind;

/// One lane's events of today, and which of them stand.
struct LaneDay {
    std::vector<Event> events;
    std::vector<bool> stands;
    journal::Seen seen;
};

Result<LaneDay> laneDayOf(Workplace &workplace, const Lane &lane, Day today)
{
    store::EventRepository repository(workplace.database);
    auto events = repository.ofDay(lane, today);
    const auto mets = repository.ofSubject({lane, "met"});
    if (!events || !mets)
        return events ? mets.error() : events.error();
    std::sort(events->begin(), events->end(), [](const Event &a, const Event &b) {
        return std::tie(a.instant, a.device, a.counter) < std::tie(b.instant, b.device, b.counter);
    });
    std::vector<bool> stands = journal::whichStand(*events);
    return LaneDay{*std::move(events), std::move(stands), journal::Seen(*mets)};
}

/// A later word of the same register stands: this one counts no more, taken back or not.
bool isReplaced(const LaneDay &day, std::size_t at)
{
    const std::string own = registerOf(day.events[at]);
    if (own.empty())
        return false;
    for (std::size_t i = 0; i < day.events.size(); ++i) {
        if (i != at && day.stands[i] && registerOf(day.events[i]) == own &&
            day.seen.saw(day.events[i], day.events[at]))
            return true;
    }
    return false;
}

/// Whose what is noted, and how it is told.
class Telling
{
public:
    Telling(Workplace &workplace, ChildId child, std::string author)
        : m_workplace(workplace), m_child(std::move(child)), m_author(std::move(author))
    {
    }

    Outcome addLane(const Lane &lane, Day today)
    {
        const auto day = laneDayOf(m_workplace, lane, today);
        if (!day)
            return day.error();
        std::map<std::pair<DeviceId, std::uint64_t>, std::vector<std::size_t>> acts;
        for (std::size_t i = 0; i < day->events.size(); ++i) {
            const Event &event = day->events[i];
            if (event.kind == Kind::TakenBack || !journal::canBeTakenBack(event.kind))
                continue;
            const auto about = isAboutTheChild(event);
            if (!about)
                return about.error();
            if (*about && !isReplaced(*day, i))
                acts[{event.device, journal::breathOf(event)}].push_back(i);
        }
        for (const auto &[key, places] : acts) {
            if (Outcome added = addAct(*day, places); !added)
                return added;
        }
        return Done{};
    }

    [[nodiscard]] std::vector<Noted> newestFirst() &&
    {
        std::sort(m_noted.begin(), m_noted.end(), [](const Noted &a, const Noted &b) {
            const Event &one = a.last();
            const Event &other = b.last();
            return std::tie(other.instant, other.device, other.counter) <
                   std::tie(one.instant, one.device, one.counter);
        });
        return std::move(m_noted);
    }

private:
    Result<bool> isAboutTheChild(const Event &event)
    {
        if (event.lane.kind == LaneKind::Box || event.lane.kind == LaneKind::Safety)
            return true;
        const Fields fields(event.fields);
        if (const auto child = fields.text("child"))
            return *child == m_child.value;
        const auto play = playOf(event);
        if (!play)
            return play.error();
        return *play && (*play)->child == m_child;
    }

    /// The play that an event is about, also one whose beginning was taken back today.
    Result<std::optional<play::Play>> playOf(const Event &event)
    {
        const auto id = Fields(event.fields).text("play");
        if (!id || event.lane.kind != LaneKind::Home)
            return std::optional<play::Play>();
        const auto said = store::EventRepository(m_workplace.database)
                              .ofSubject({event.lane, journal::subjectOf(event)});
        if (!said)
            return said.error();
        for (const Event &start : *said) {
            if (const auto started = play::readStarted(start)) {
                play::Play play;
                play.child = started->child;
                play.activity = started->activity;
                return std::optional(play);
            }
        }
        return std::optional<play::Play>();
    }

    Outcome addAct(const LaneDay &day, const std::vector<std::size_t> &places)
    {
        Noted noted;
        noted.takenBack = true;
        noted.mine = true;
        for (const std::size_t place : places) {
            const Event &event = day.events[place];
            noted.takenBack = noted.takenBack && !day.stands[place];
            noted.mine = noted.mine && isOwn(event);
            if (Outcome told = tell(event, noted); !told)
                return told;
            noted.events.push_back(event);
        }
        m_noted.push_back(std::move(noted));
        return Done{};
    }

    Outcome tell(const Event &event, Noted &noted)
    {
        if (const auto fact = child::readFact(event)) {
            if (fact->fact == "alias" || fact->fact == "kind")
                noted.mine = false;
            const auto alias = store::HomeRepository(m_workplace.database)
                                   .fact({event.lane.scope}, fact->person, "alias");
            if (!alias)
                return alias.error();
            noted.person = alias->value_or("");
        } else if (const auto activity = Fields(event.fields).text("activity")) {
            noted.activity = {*activity};
        } else if (const auto play = playOf(event); !play) {
            return play.error();
        } else if (*play) {
            noted.activity = (*play)->activity;
        }
        return Done{};
    }

    /// Whether a word of the one who asks, on this phone, would count against @p event.
    [[nodiscard]] bool isOwn(const Event &event) const
    {
        Event taking = event;
        taking.author = m_author;
        taking.device = m_workplace.device.id;
        return journal::givesWayTo(event, taking);
    }

    Workplace &m_workplace;
    ChildId m_child;
    std::string m_author;
    std::vector<Noted> m_noted;
};

} // namespace

int Noted::minuteOfDay() const
{
    return localMinuteOfDay(last().instant.ms, last().offsetMinutes);
}

Result<std::vector<Noted>> notedToday(Workplace &workplace, const std::string &childAlias,
                                      const std::string &author)
{
    const auto box = store::BoxRepository(workplace.database).boxOf(childAlias);
    const auto today = store::todayOf(workplace.clock);
    if (!box || !today)
        return box ? today.error() : box.error();
    const std::string who = author.empty() ? workplace.device.person : author;
    std::vector<Lane> lanes{{LaneKind::Box, box->id.value}};
    if (!workplace.device.home.empty()) {
        lanes.push_back({LaneKind::Home, workplace.device.home.value});
        lanes.push_back({LaneKind::Safety, workplace.device.home.value});
    }
    if (who == workplace.device.person)
        lanes.push_back(notesLaneOf(workplace.device));
    Telling telling(workplace, box->child, who);
    for (const Lane &lane : lanes) {
        if (const Outcome added = telling.addLane(lane, today->day); !added)
            return added.error();
    }
    return std::move(telling).newestFirst();
}

} // namespace lidlark::usecase
