#include "core/usecase/child_goals.h"
#include "core/usecase/export_tables.h"

namespace lidlark::usecase {

namespace {

Cell cellOf(const std::string &words)
{
    return words.empty() ? Cell() : Cell(words);
}

void addGoal(OpenTable &table, const std::string &child, const goals::GoalRecord &record)
{
    const child::Goal &goal = record.current().goal;
    std::string areas;
    for (const catalogue::LifeArea area : goal.lifeAreas)
        areas += (areas.empty() ? "" : "; ") + std::string(catalogue::lifeAreaNames.of(area));
    std::string skills;
    for (const catalogue::Skill skill : goal.skills)
        skills += (skills.empty() ? "" : "; ") + std::string(catalogue::skillCodes.of(skill));
    table.add({child, goal.words, goal.shortWords, goal.now, levelOf(goal, goal.now), goal.agreedOn,
               goal.reviewOn, levelOf(goal, -2), levelOf(goal, -1), levelOf(goal, 0),
               levelOf(goal, 1), levelOf(goal, 2), areas, skills,
               record.ending ? Cell(record.ending->on) : Cell()});
}

/// Every wording it has had, the first one first.
void addWordings(OpenTable &table, const std::string &child, const goals::GoalRecord &record)
{
    for (std::size_t i = 0; i < record.versions.size(); ++i) {
        const goals::AgreedGoal &goal = record.versions[i].goal;
        table.add({child, record.current().goal.words, goal.version, yesOrNo(i == record.inForce),
                   goal.agreedOn, cellOf(record.versions[i].author), cellOf(goal.reason),
                   goal.words, levelOf(goal, -2), levelOf(goal, -1), levelOf(goal, 0),
                   levelOf(goal, 1), levelOf(goal, 2), levelOf(goal, goal.baseline)});
    }
}

void addTurns(OpenTable &table, const std::string &child, const goals::GoalRecord &record)
{
    for (const goals::GoalTurn &turn : record.turns)
        table.add({child, record.current().goal.words, turn.on,
                   plainWords(goals::turnNames.of(turn.turn)), cellOf(turn.words),
                   cellOf(turn.by)});
}

void addRatings(OpenTable &table, const std::string &child, const goals::GoalRecord &record)
{
    for (const goals::GoalVersion &version : record.versions) {
        for (const goals::Rating &rating : version.ratings)
            table.add({child, version.goal.words, version.goal.version, rating.day,
                       child::levelOf(version.goal, rating.level), cellOf(rating.rater),
                       goals::ratedByNames.of(rating.role)});
    }
}

} // namespace

Tables goalTables(const ExportSource &source)
{
    OpenTable table{"goals",
                    "goals",
                    {"child", "goal", "in short", "now", "now in words", "agreed on", "review on",
                     "at -2", "at -1", "at 0", "at 1", "at 2", "part of life", "skill codes",
                     "ended on"},
                    {}};
    OpenTable wordings{"goals",
                       "words of goals",
                       {"child", "goal", "version of its words", "in force", "agreed on",
                        "written by", "why these words", "words", "at -2", "at -1", "at 0", "at 1",
                        "at 2", "at the start"},
                       {}};
    OpenTable turns{"goals",
                    "ends of goals",
                    {"child", "goal", "day", "what became of it", "in words", "said by"},
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
            addGoal(table, box.alias, record);
            addWordings(wordings, box.alias, record);
            addTurns(turns, box.alias, record);
            addRatings(ratings, box.alias, record);
        }
    }
    return std::vector{std::move(table), std::move(wordings), std::move(turns), std::move(ratings)};
}

} // namespace lidlark::usecase
