#include "core/store/recording.h"

#include "core/journal/lane_home.h"
#include "core/journal/take_backs.h"
#include "core/store/projector.h"
#include "core/store/rights.h"

#include <algorithm>

namespace lidlark::store {

namespace {

constexpr int firstYear = 2020;
constexpr int lastYear = 2099;

/// The date a person reads on the phone: ours begins in the small hours, theirs at midnight.
std::string shownDate(const Clock &clock)
{
    const std::int64_t localMs = clock.nowMs() + clock.offsetMinutes() * msPerMinute;
    return textFromMs(localMs).substr(0, std::string_view("1970-01-01").size());
}

} // namespace

Result<DayPart> todayOf(const Clock &clock)
{
    const DayPart now = dayPartAt(clock.nowMs(), clock.offsetMinutes());
    const int year = civilFrom(now.day).year;
    if (year < firstYear || year > lastYear)
        return Error{ErrorCode::ClockUnset, shownDate(clock)};
    return now;
}

Recording::Recording(Database &database, Device device, const Clock &clock, Transaction transaction)
    : m_database(database), m_events(database), m_local(database), m_device(std::move(device)),
      m_clock(clock), m_transaction(std::move(transaction))
{
}

Result<Recording> Recording::begin(Database &database, const Device &device, const Clock &clock)
{
    if (const Result<DayPart> today = todayOf(clock); !today)
        return today.error();
    Result<Transaction> transaction = Transaction::begin(database);
    if (!transaction)
        return transaction.error();
    return Recording(database, device, clock, std::move(*transaction));
}

Outcome Recording::say(const journal::Lane &lane, journal::Kind kind, std::string fields)
{
    return sayAs(m_device.person, lane, kind, std::move(fields));
}

Outcome Recording::sayAs(const std::string &author, const journal::Lane &lane, journal::Kind kind,
                         std::string fields)
{
    const Result<Instant> own = m_local.lastInstant("own");
    const Result<Instant> received = m_local.lastInstant("received");
    if (!own || !received)
        return own ? received.error() : own.error();
    const std::int64_t now = m_clock.nowMs();
    const Instant instant = nextInstant(now, *own, *received);
    if (Outcome done = m_local.setLastInstant("own", instant); !done)
        return done;
    const int offset = m_clock.offsetMinutes();
    return write({lane, m_device.id, 0, instant, dayPartAt(now, offset), offset, author, kind,
                  inOneBreath(lane, kind, std::move(fields))});
}

/// What one act says in one lane is taken back together: all but the first name the first.
std::string Recording::inOneBreath(const journal::Lane &lane, journal::Kind kind,
                                   std::string fields) const
{
    const auto first = m_first.find(lane);
    if (first == m_first.end() || !journal::canBeTakenBack(kind))
        return fields;
    return journal::fieldsWith(fields, first->second);
}

Outcome Recording::sayUntimed(const journal::Lane &lane, journal::Kind kind, std::string fields)
{
    journal::Event event;
    event.lane = lane;
    event.device = m_device.id;
    event.offsetMinutes = m_clock.offsetMinutes();
    event.when = dayPartAt(m_clock.nowMs(), event.offsetMinutes);
    event.instant = {firstMomentMs(event.when, event.offsetMinutes), 0};
    event.author = m_device.person;
    event.kind = kind;
    event.fields = std::move(fields);
    return write(std::move(event));
}

Outcome Recording::write(journal::Event event)
{
    if (Outcome allowed = maySay(m_device, event.kind, event.when.day); !allowed)
        return allowed;
    const Result<std::uint64_t> last = m_events.lastCounter(event.lane, event.device);
    if (!last)
        return last.error();
    event.counter = *last + 1;
    const Result<bool> written = m_events.insert(event);
    if (!written)
        return written.error();
    if (journal::canBeTakenBack(event.kind))
        m_first.try_emplace(event.lane, event.counter);
    m_changed.insert({event.lane, journal::subjectOf(event)});
    return Done{};
}

Result<bool> Recording::receive(const journal::Event &event)
{
    Result<bool> written = keep(event);
    if (!written || !*written)
        return written;
    if (journal::tellsNoTime(event.lane.kind))
        return true; // its instant is a part of the day, not a moment
    const Result<Instant> largest = m_local.lastInstant("received");
    if (!largest)
        return largest.error();
    const bool believable = event.instant.ms <= m_clock.nowMs() + mostAheadMs;
    if (believable && event.instant > *largest) {
        if (const Outcome done = m_local.setLastInstant("received", event.instant); !done)
            return done.error();
    }
    return true;
}

Result<bool> Recording::keep(const journal::Event &event)
{
    Result<bool> written = m_events.insert(event);
    if (written && *written)
        m_changed.insert({event.lane, journal::subjectOf(event)});
    return written;
}

Result<bool> Recording::receiveGone(const journal::Lane &lane, const DeviceId &device,
                                    const journal::Gone &gone)
{
    return m_events.insertGone(lane, device, gone);
}

Outcome Recording::erase(const Outdated &outdated)
{
    const auto subjects = m_events.erase(outdated);
    if (!subjects)
        return subjects.error();
    m_changed.insert(subjects->begin(), subjects->end());
    return Done{};
}

Outcome Recording::eraseSubject(const LaneSubject &subject)
{
    m_changed.insert(subject);
    return m_events.eraseSubject(subject);
}

Outcome Recording::applyErasures()
{
    std::set<journal::Lane> lanes;
    for (const LaneSubject &subject : m_changed)
        lanes.insert(subject.lane);
    for (const journal::Lane &lane : lanes) {
        auto said = m_events.ofSubject({lane, "erased"});
        if (said)
            said = m_events.counting(*std::move(said));
        if (!said)
            return said.error();
        for (const journal::Event &event : *said) {
            const auto erasure = journal::readErasure(event);
            const auto changed = erasure
                                     ? m_events.eraseCovered(lane, *erasure)
                                     : Result<std::vector<LaneSubject>>(std::vector<LaneSubject>());
            if (!changed)
                return changed.error();
            m_changed.insert(changed->begin(), changed->end());
        }
    }
    return Done{};
}

Outcome Recording::project()
{
    if (Outcome done = applyErasures(); !done)
        return done;
    Outcome done = Projector(m_database).project(m_changed);
    if (done)
        m_changed.clear();
    return done;
}

Outcome Recording::commit()
{
    if (Outcome done = project(); !done)
        return done;
    return m_transaction.commit();
}

} // namespace lidlark::store
