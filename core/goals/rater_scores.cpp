#include "core/goals/rater_scores.h"

#include <set>
#include <utility>

namespace lidlark::goals {

namespace {

using Rater = std::pair<RatedBy, std::string>;

std::set<Rater> ratersOf(std::span<const GoalRecord> records)
{
    std::set<Rater> raters; // what was agreed together comes first by its value
    for (const GoalRecord &record : records) {
        for (const Rating &rating : record.current().ratings)
            raters.insert(
                {rating.role, rating.role == RatedBy::Together ? std::string() : rating.rater});
    }
    return raters;
}

RaterScore scoreBy(const Rater &rater, std::span<const GoalRecord> records, double correlation)
{
    RaterScore score{rater.first, rater.second, std::nullopt, 0, static_cast<int>(records.size())};
    std::vector<WeighedLevel> levels;
    for (const GoalRecord &record : records) {
        const Rating *last = latestBy(record.current(), rater.first, rater.second);
        if (last == nullptr)
            continue;
        levels.push_back({static_cast<double>(record.current().goal.weight), last->level});
        ++score.rated;
    }
    score.t = attainmentScore(levels, correlation);
    return score;
}

} // namespace

std::vector<RaterScore> raterScores(std::span<const GoalRecord> records, double correlation)
{
    std::vector<RaterScore> scores;
    for (const Rater &rater : ratersOf(records))
        scores.push_back(scoreBy(rater, records, correlation));
    return scores;
}

} // namespace lidlark::goals
