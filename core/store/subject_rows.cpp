#include "core/store/subject_rows.h"

#include "core/goals/goal_record.h"
#include "core/journal/latest.h"
#include "core/store/box_rows.h"
#include "core/store/clinic_rows.h"
#include "core/store/home_rows.h"
#include "core/store/note_rows.h"
#include "core/store/plan_rows.h"

namespace lidlark::store {

using journal::Event;
using journal::Kind;
using journal::Meetings;
using journal::Seen;

namespace {

std::optional<child::ChildGoal> goalInForce(std::span<const Event> events, const Seen &seen)
{
    const auto record = goals::foldGoal(events, seen);
    return record ? goals::inForce(*record) : std::nullopt;
}

} // namespace

Outcome writeBoxSubject(Database &database, const LaneSubject &subject,
                        std::span<const Event> events, const Meetings &meetings)
{
    const Seen &seen = meetings.seen;
    const std::string &box = subject.lane.scope;
    if (subject.subject == "child") {
        if (const Event *child = journal::latestOf(events, Kind::Child, seen))
            return writeBox(database, box, *child);
    } else if (subject.subject == "revision") {
        if (const auto list = box::foldLidList(events, seen))
            return writeLidList(database, box, *list);
    } else if (subject.subject == "place") {
        return writePlace(database, box, box::foldPlace(events, meetings));
    } else if (subject.subject.starts_with("grading-pin:")) {
        return writeGradingPin(database, subject,
                               play::foldGrading(events, seen, Kind::GradingPin));
    }
    return Done{};
}

Outcome writeHomeSubject(Database &database, const LaneSubject &subject,
                         std::span<const Event> events, const Seen &seen)
{
    const std::string_view text = subject.subject;
    if (text.starts_with("fact:"))
        return writeFact(database, subject, child::foldFact(events, seen));
    if (text.starts_with("permission:"))
        return writePermission(database, subject, child::foldPermission(events, seen));
    if (text.starts_with("play:"))
        return writePlay(database, subject, play::foldPlay(events, seen));
    if (text.starts_with("offered:"))
        return writeOffered(database, subject, play::foldOffered(events));
    if (text.starts_with("check-in:"))
        return writeCheckIn(database, subject, checkin::foldCheckIn(events, seen));
    if (text.starts_with("goal:"))
        return writeGoal(database, subject, goalInForce(events, seen));
    if (text.starts_with("grading:"))
        return writeGrading(database, subject, play::foldGrading(events, seen, Kind::Grading));
    if (text.starts_with("planned:"))
        return writeDayWish(database, subject, play::foldDayWish(events, seen));
    if (text.starts_with("reads:"))
        return writeReadingLanguage(database, subject, child::foldReadingLanguage(events, seen));
    if (text.starts_with("our-way:"))
        return writeOurWay(database, subject, play::foldOurWay(events, seen));
    if (text.starts_with("note:"))
        return writeOwnNote(database, subject, play::foldOwnNote(events));
    return writeClinicSubject(database, subject, events, seen);
}

} // namespace lidlark::store
