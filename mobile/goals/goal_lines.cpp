#include "mobile/goals/goal_lines.h"

#include "core/wording/goal_words.h"
#include "core/wording/print_words.h"
#include "core/wording/skill_words.h"
#include "mobile/bridge/letters.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

QString areaWords(catalogue::LifeArea area)
{
    return capitalised(translated(wording::lifeAreaWords(area)));
}

QString areaLine(const child::Goal &goal)
{
    std::vector<wording::Argument> areas;
    for (const catalogue::LifeArea area : goal.lifeAreas)
        areas.emplace_back(wording::lifeAreaWords(area));
    return areas.empty() ? QString() : capitalised(translated(wording::inList(std::move(areas))));
}

QStringList ratingLines(const goals::GoalVersion &version)
{
    QStringList lines;
    for (auto rating = version.ratings.rbegin(); rating != version.ratings.rend(); ++rating)
        lines.append(translated(wording::ratingWords(*rating, version)));
    return lines;
}

QStringList turnLines(const goals::GoalRecord &record)
{
    QStringList lines;
    for (auto turn = record.turns.rbegin(); turn != record.turns.rend(); ++turn) {
        lines.append(translated(wording::turnLine(*turn)));
        if (!turn->words.empty())
            lines.append(fromCore(turn->words));
    }
    return lines;
}

} // namespace lidlark::mobile
