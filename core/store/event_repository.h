#pragma once

#include "core/journal/erasure.h"
#include "core/journal/event.h"
#include "core/store/crew_repository.h"
#include "core/store/database.h"

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lidlark::store {

/// One subject of one lane: what a projection is folded from.
struct LaneSubject {
    journal::Lane lane;
    std::string subject;
    auto operator<=>(const LaneSubject &) const = default;
};

/// What one device has written, part by part: events, and what is gone.
struct OwnRun {
    std::vector<journal::Event> events;
    std::vector<journal::Gone> gone;
};

/// What has been kept for long enough: of these kinds, in lanes of one kind, dated earlier than
/// @ref before.
struct Outdated {
    journal::LaneKind lanes = journal::LaneKind::CheckIns;
    std::vector<journal::Kind> kinds;
    Day before;
};

/// The events of a store. Erased ones are counted, and given to nobody.
class EventRepository
{
public:
    explicit EventRepository(Database &database) : m_database(database) {}

    /// @returns false when this very event was there before: repeating changes nothing.
    Result<bool> insert(const journal::Event &event);
    /// Everything said of a subject, also what was taken back.
    Result<std::vector<journal::Event>> ofSubject(const LaneSubject &subject);
    /// What stands of it (core/journal/take_backs.h) and counts (core/crew/rights.h): what every
    /// fold and every view reads.
    Result<std::vector<journal::Event>> standingOfSubject(const LaneSubject &subject);
    /// Without what its device had no right to say, or said after it was removed.
    Result<std::vector<journal::Event>> counting(std::vector<journal::Event> events);
    /// The crews have changed since they were read.
    void forgetCrews() { m_crews.reset(); }
    /// Everything said in a lane that is dated @p day.
    Result<std::vector<journal::Event>> ofDay(const journal::Lane &lane, Day day);
    Result<std::vector<journal::Event>> all();
    Result<std::vector<LaneSubject>> subjects();
    Result<std::vector<LaneSubject>> subjectsOf(const journal::Lane &lane);
    /// What one device has written in a lane after a counter, in its order, and what is left of
    /// the rest.
    Result<OwnRun> ofDeviceAfter(const journal::Lane &lane, const DeviceId &device,
                                 std::uint64_t counter);
    /// Keeps that an event was, and that it is gone. @returns false where anything of it is here.
    Result<bool> insertGone(const journal::Lane &lane, const DeviceId &device,
                            const journal::Gone &gone);
    /// How many events of a lane are gone.
    Result<std::int64_t> goneIn(const journal::Lane &lane);
    /// How many events of a device up to a counter are gone.
    Result<std::int64_t> goneUpTo(const journal::Lane &lane, const DeviceId &device,
                                  std::uint64_t counter);
    /// Takes the payload of what an erasure in @p lane covers (core/journal/erasure.h).
    /// @returns the subjects whose state has changed.
    Result<std::vector<LaneSubject>> eraseCovered(const journal::Lane &lane,
                                                  const journal::Erasure &erasure);
    /// Highest counter this device has used in the lane; 0 for none.
    Result<std::uint64_t> lastCounter(const journal::Lane &lane, const DeviceId &device);
    /// Whether a counter of this device in the lane is missing below its highest of those up to
    /// @p upTo.
    Result<bool> hasGap(const journal::Lane &lane, const DeviceId &device, std::uint64_t upTo);
    /// Whether another event stands under this one's counter, and this one does not.
    Result<bool> isTakenByOther(const journal::Event &event);
    Result<std::int64_t> count();
    /// The latest day that each device has reached in its events, check-ins apart.
    Result<std::vector<Day>> latestDays();
    /// Whether anything of it is here.
    Result<bool> any(const Outdated &outdated);
    /// Takes the payload: what is left is who wrote the how-manieth event of a lane, and its
    /// identity (events.md 9). @returns the subjects whose state has changed.
    Result<std::vector<LaneSubject>> erase(const Outdated &outdated);
    /// The same for what was said of one subject, but for the word that it is removed: that has to
    /// reach the other devices.
    Outcome eraseSubject(const LaneSubject &subject);

private:
    static constexpr std::string_view eventColumns =
        "SELECT lane, device, counter, instant_ms, logical, day, part, offset_minutes, author, "
        "kind, fields FROM event ";
    static constexpr std::string_view emptyEvents =
        "UPDATE event SET erased = 1, fields = '{}', subject = '', author = '', day = 0, part = 0, "
        "instant_ms = 0, logical = 0, offset_minutes = 0 ";
    Result<std::vector<journal::Event>> collect(Statement &query);
    Database &m_database;
    std::optional<std::map<std::string, crew::Crew>> m_crews; ///< By box, once they were needed.
};

} // namespace lidlark::store
