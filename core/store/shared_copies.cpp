#include "core/store/shared_copies.h"

#include "core/journal/lane_home.h"
#include "core/play/sharing.h"
#include "core/store/box_repository.h"
#include "core/store/home_repository.h"
#include "core/store/rows.h"

#include <algorithm>
#include <map>
#include <set>
#include <span>
#include <tuple>
#include <utility>
#include <vector>

namespace lidlark::store {

namespace {

using journal::Event;
using journal::Kind;
using journal::Lane;

constexpr std::size_t mostNamedAtOnce = 200; // so that an erasure stays a small event

std::string subjectOfCopy(const PlayId &id)
{
    return "play:" + id.value;
}

/// What one home has copied, and what it is to have copied.
class Copies
{
public:
    Copies(Recording &recording, Database &database, const Device &device, const DayPart &today)
        : m_recording(recording), m_database(database), m_events(database), m_device(device),
          m_today(today), m_lane(journal::sharedPlaysOf(device.home.value))
    {
    }

    Result<bool> keep()
    {
        const auto subjects = m_events.subjectsOf(m_lane);
        const auto shared = sharedBoxes();
        if (!subjects || !shared)
            return !subjects ? subjects.error() : shared.error();
        if (subjects->empty() && shared->empty())
            return false; // most homes: the rows need not be up to date yet
        Outcome done = m_recording.project();
        for (const auto &[child, sharing] : *shared) {
            if (done)
                done = addWanted(child, sharing);
        }
        if (done)
            done = dropOthers(*subjects);
        for (const play::Copy &copy : m_wanted) {
            if (done)
                done = bringUpToDate(copy);
        }
        if (done)
            done = eraseNamed();
        return done ? Result<bool>(m_said) : done.error();
    }

private:
    using SharedBoxes = std::vector<std::pair<ChildId, play::Sharing>>;

    Result<SharedBoxes> sharedBoxes()
    {
        const auto boxes = BoxRepository(m_database).boxes();
        if (!boxes)
            return boxes.error();
        SharedBoxes shared;
        for (const BoxRow &box : *boxes) {
            const auto sharing = sharingIn(m_database, m_device.home, box.child);
            if (!sharing)
                return sharing.error();
            if (*sharing && (*sharing)->yes)
                shared.emplace_back(box.child, **sharing);
        }
        return shared;
    }

    Outcome addWanted(const ChildId &child, const play::Sharing &sharing)
    {
        HomeRepository homes(m_database);
        const auto plays = homes.plays(m_device.home, child, sharing.day - 1); // a guest's clock
        const auto copied = homes.plays({m_lane.scope}, child, Day{0});
        if (!plays || !copied)
            return plays ? copied.error() : plays.error();
        for (const play::Play &play : *plays) {
            if (auto copy = play::copyOf(play, sharing))
                m_wanted.push_back(*std::move(copy));
        }
        for (const play::Play &play : *copied)
            m_copied.emplace(play.id.value, play);
        return Done{};
    }

    Outcome dropOthers(const std::vector<LaneSubject> &subjects)
    {
        std::set<std::string> wanted;
        for (const play::Copy &copy : m_wanted)
            wanted.insert(subjectOfCopy(copy.id));
        for (const LaneSubject &subject : subjects) {
            if (wanted.contains(subject.subject) || !subject.subject.starts_with("play:"))
                continue;
            const auto said = m_events.ofSubject(subject);
            if (!said)
                return said.error();
            for (const Event &event : *said)
                m_gone.push_back(journal::identityOf(event));
        }
        return Done{};
    }

    Outcome bringUpToDate(const play::Copy &copy)
    {
        const auto known = m_copied.find(copy.id.value);
        std::vector<play::Phrase> told;
        if (known != m_copied.end())
            told = known->second.phrases;
        else if (Outcome done = say(copy, Kind::PlayStarted,
                                    play::fieldsOf(play::Started{copy.id, copy.child, copy.activity,
                                                                 copy.version}));
                 !done)
            return done;
        for (const play::Phrase phrase : copy.phrases) {
            if (std::ranges::find(told, phrase) != told.end())
                continue;
            if (Outcome done = say(copy, Kind::Reaction, play::fieldsOfReaction(copy.id, phrase));
                !done)
                return done;
        }
        const bool tooMuch = std::ranges::any_of(told, [&copy](play::Phrase phrase) {
            return std::ranges::find(copy.phrases, phrase) == copy.phrases.end();
        });
        return tooMuch ? dropPhrases(copy) : Outcome(Done{});
    }

    /// What was noticed, and is taken back.
    Outcome dropPhrases(const play::Copy &copy)
    {
        const auto said = m_events.ofSubject({m_lane, subjectOfCopy(copy.id)});
        if (!said)
            return said.error();
        for (const Event &event : *said) {
            const bool still =
                std::ranges::any_of(copy.phrases, [&event, &copy](play::Phrase phrase) {
                    return event.fields == play::fieldsOfReaction(copy.id, phrase);
                });
            if (event.kind == Kind::Reaction && !still)
                m_gone.push_back(journal::identityOf(event));
        }
        return Done{};
    }

    Outcome say(const play::Copy &copy, Kind kind, std::string fields)
    {
        return write(kind, std::move(fields), copy.when);
    }

    /// In nobody's name, and dated like a check-in: neither when nor by whom it was copied can be
    /// read off it, and no moment of this phone comes to depend on it.
    Outcome write(Kind kind, std::string fields, const DayPart &when)
    {
        const auto last = m_events.lastCounter(m_lane, m_device.id);
        if (!last)
            return last.error();
        Event event{m_lane, m_device.id, *last + 1,        {firstMomentMs(when, 0), 0}, when, 0,
                    {},     kind,        std::move(fields)};
        const auto kept = m_recording.keep(event);
        m_said = true;
        return kept ? Outcome(Done{}) : Outcome(kept.error());
    }

    Outcome eraseNamed()
    {
        for (std::size_t next = 0; next < m_gone.size(); next += mostNamedAtOnce) {
            const auto some =
                std::span(m_gone).subspan(next, std::min(mostNamedAtOnce, m_gone.size() - next));
            const journal::Erasure erasure{std::nullopt, {some.begin(), some.end()}};
            if (Outcome done = write(Kind::Erased, fieldsOf(erasure), m_today); !done)
                return done;
        }
        return Done{};
    }

    Recording &m_recording;
    Database &m_database;
    EventRepository m_events;
    Device m_device;
    DayPart m_today;
    Lane m_lane;
    std::vector<play::Copy> m_wanted;
    std::map<std::string, play::Play> m_copied;
    std::vector<std::string> m_gone;
    bool m_said = false;
};

} // namespace

Result<std::optional<play::Sharing>> sharingIn(Database &database, const HomeId &home,
                                               const ChildId &child)
{
    const Lane lane{journal::LaneKind::Home, home.value};
    EventRepository events(database);
    const auto said = events.standingOfSubject({lane, "sharing:" + child.value});
    if (!said)
        return said.error();
    if (said->empty())
        return std::optional<play::Sharing>();
    auto mets = events.ofSubject({lane, "met"});
    if (mets)
        mets = events.counting(*std::move(mets));
    if (!mets)
        return mets.error();
    return play::foldSharing(*said, journal::Seen(*mets));
}

Result<std::vector<play::Play>> sharedPlays(Database &database, const ChildId &child, Day since)
{
    Result<Statement> query = database.prepare(
        "SELECT DISTINCT home FROM play WHERE child = ?1 AND substr(home, -length(?2)) = ?2");
    if (!query)
        return query.error();
    query->bind(1, child.value).bind(2, journal::sharedPlaysOf({}).scope);
    const auto lanes =
        collectRows<HomeId>(*query, [](const Statement &row) { return HomeId{row.text(0)}; });
    if (!lanes)
        return lanes.error();
    std::vector<play::Play> all;
    for (const HomeId &lane : *lanes) {
        const auto plays = HomeRepository(database).plays(lane, child, since);
        if (!plays)
            return plays.error();
        all.insert(all.end(), plays->begin(), plays->end());
    }
    std::ranges::sort(all, [](const play::Play &a, const play::Play &b) {
        return std::tie(b.when, a.id) < std::tie(a.when, b.id);
    });
    return all;
}

Result<bool> keepCopies(Recording &recording, Database &database, const Device &device,
                        const Clock &clock)
{
    if (device.home.empty() || device.role == Role::Guest)
        return false;
    const auto today = todayOf(clock);
    if (!today)
        return today.error();
    return Copies(recording, database, device, *today).keep();
}

} // namespace lidlark::store
