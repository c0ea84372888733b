#include "core/store/home_repository.h"
#include "core/store/note_repository.h"
#include "core/usecase/child_goals.h"
#include "core/usecase/export_tables.h"
#include "core/usecase/notes_lane.h"

namespace lidlark::usecase {

namespace {

void addGoal(OpenTable &table, const std::string &child, const child::Goal &goal)
{
    std::string areas;
    for (const catalogue::LifeArea area : goal.lifeAreas)
        areas += (areas.empty() ? "" : "; ") + std::string(catalogue::lifeAreaNames.of(area));
    std::string skills;
    for (const catalogue::Skill skill : goal.skills)
        skills += (skills.empty() ? "" : "; ") + std::string(catalogue::skillCodes.of(skill));
    table.add({child, goal.words, goal.shortWords, goal.now, levelOf(goal, goal.now), goal.agreedOn,
               goal.reviewOn, levelOf(goal, -2), levelOf(goal, -1), levelOf(goal, 0),
               levelOf(goal, 1), levelOf(goal, 2), areas, skills});
}

void addRatings(OpenTable &table, const std::string &child, const goals::GoalRecord &record)
{
    for (const goals::GoalVersion &version : record.versions) {
        for (const goals::Rating &rating : version.ratings)
            table.add({child, version.goal.words, version.goal.version, rating.day,
                       child::levelOf(version.goal, rating.level),
                       rating.rater.empty() ? Cell() : Cell(rating.rater),
                       goals::ratedByNames.of(rating.role)});
    }
}

void addCheckIn(OpenTable &table, const ExportSource &source, const std::string &child,
                const std::string &home, const checkin::CheckIn &checkIn)
{
    table.add({child, home, checkIn.when.day, checkIn.when.part,
               checkin::kiteNames.of(checkIn.before),
               plainWords(checkin::shownByNames.of(checkIn.shownBy)),
               checkIn.after ? Cell(checkin::kiteNames.of(*checkIn.after)) : Cell(),
               checkIn.activity.empty() ? Cell() : Cell(source.activity(checkIn.activity))});
}

} // namespace

Tables goalTables(const ExportSource &source)
{
    OpenTable table{"goals",
                    "goals",
                    {"child", "goal", "in short", "now", "now in words", "agreed on", "review on",
                     "at -2", "at -1", "at 0", "at 1", "at 2", "part of life", "skill codes"},
                    {}};
    OpenTable ratings{
        "goals",
        "what was said of goals",
        {"child", "goal", "version of its words", "day", "level in words", "said by", "as"},
        {}};
    for (const store::BoxRow &box : source.boxes) {
        const auto records = childGoals(source.workplace, box.alias);
        if (!records)
            return records.error();
        for (const goals::GoalRecord &record : *records) {
            addGoal(table, box.alias, record.current().goal);
            addRatings(ratings, box.alias, record);
        }
    }
    return std::vector{std::move(table), std::move(ratings)};
}

Tables checkInTables(const ExportSource &source)
{
    OpenTable table{"the kite",
                    "check-ins",
                    {"child", "home", "day", "part of day", "kite", "shown by", "kite after play",
                     "after which activity"},
                    {}};
    store::HomeRepository homes(source.workplace.database);
    for (const child::HomeSheet &home : source.homes) {
        for (const store::BoxRow &box : source.boxes) {
            const auto checkIns = homes.checkIns(home.id, box.child, Day{});
            if (!checkIns)
                return checkIns.error();
            for (const checkin::CheckIn &checkIn : *checkIns)
                addCheckIn(table, source, box.alias, source.named(home.id.value), checkIn);
        }
    }
    return std::vector{std::move(table)};
}

Tables noteTables(const ExportSource &source)
{
    OpenTable table{"notes",
                    "own notes",
                    {"child", "day", "part of day", "written by", "words", "chosen phrase",
                     "may go to the therapist"},
                    {}};
    store::NoteRepository repository(source.workplace.database);
    const std::string owner = notesLaneOf(source.workplace.device).scope;
    for (const store::BoxRow &box : source.boxes) {
        const auto notes = repository.notes(owner, box.child);
        if (!notes)
            return notes.error();
        for (const play::OwnNote &note : *notes)
            table.add(
                {box.alias, note.when.day, note.when.part, note.author,
                 note.words.empty() ? Cell() : Cell(note.words),
                 note.phrase ? Cell(plainWords(play::notePhraseNames.of(*note.phrase))) : Cell(),
                 yesOrNo(note.sent)});
    }
    return std::vector{std::move(table)};
}

} // namespace lidlark::usecase
