#pragma once

#include "core/base/clock.h"
#include "core/store/device_repository.h"
#include "core/store/event_repository.h"

#include <map>
#include <set>
#include <vector>

namespace lidlark::store {

/// One act of a person: the events it is written as and the rows they change, together or not at
/// all. Nothing is kept unless `commit` succeeds.
class Recording
{
public:
    /// Errors: ClockUnset when the device shows a year before 2020 or after 2099; Busy.
    static Result<Recording> begin(Database &database, const Device &device, const Clock &clock);

    /// Writes one event of this device's person, dated now.
    /// Errors of this and the two below: NotAllowed, AccessEnded (core/store/rights.h).
    Outcome say(const journal::Lane &lane, journal::Kind kind, std::string fields);
    /// The same in another person's name: two adults share one phone.
    Outcome sayAs(const std::string &author, const journal::Lane &lane, journal::Kind kind,
                  std::string fields);
    /// Dated with the first moment of the part of the day and no closer: a check-in (events.md 4),
    /// and what would place one in time, such as a menu that changes right after it.
    Outcome sayUntimed(const journal::Lane &lane, journal::Kind kind, std::string fields);
    /// Takes in an event written elsewhere. @returns whether it is new: repeating changes nothing.
    Result<bool> receive(const journal::Event &event);
    /// The same where no moment of this phone may come to depend on it.
    Result<bool> keep(const journal::Event &event);
    /// Takes in that an event was, and is gone. @returns whether nothing of it was here.
    Result<bool> receiveGone(const journal::Lane &lane, const DeviceId &device,
                             const journal::Gone &gone);
    /// Takes the payload of what has been kept for long enough (events.md 9).
    Outcome erase(const Outdated &outdated);
    /// Takes the payload of what was said of one subject, but for the word that it is removed.
    Outcome eraseSubject(const LaneSubject &subject);

    /// Brings the rows up to date before the act is over: what is said next rests on them.
    Outcome project();
    /// Nothing was said or came in that the rows do not show yet.
    [[nodiscard]] bool isEmpty() const { return m_changed.empty(); }
    Outcome commit();

private:
    Recording(Database &database, Device device, const Clock &clock, Transaction transaction);
    Outcome write(journal::Event event);
    /// What was erased goes again, as soon as it arrives.
    Outcome applyErasures();
    std::string inOneBreath(const journal::Lane &lane, journal::Kind kind,
                            std::string fields) const;

    Database &m_database;
    EventRepository m_events;
    DeviceRepository m_local;
    Device m_device;
    const Clock &m_clock;
    Transaction m_transaction;
    std::set<LaneSubject> m_changed;
    /// By lane: the counter of the first event of this act that can be taken back.
    std::map<journal::Lane, std::uint64_t> m_first;
};

/// The device's day and part of day. Errors: ClockUnset.
Result<DayPart> todayOf(const Clock &clock);

} // namespace lidlark::store
