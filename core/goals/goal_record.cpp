#include "core/goals/goal_record.h"

#include <algorithm>
#include <iterator>
#include <map>
#include <tuple>

namespace lidlark::goals {

namespace {

using journal::Event;
using journal::Kind;
using journal::Seen;

/// An event that could be read, and what it says.
template <class Value> struct Said {
    const Event *event;
    Value value;
};
using SaidGoal = Said<ChildsGoal>;
using SaidRating = Said<Rating>;

bool writtenBefore(const Event &a, const Event &b)
{
    const auto one = std::tie(a.instant, a.device, a.counter);
    const auto other = std::tie(b.instant, b.device, b.counter);
    // A copied phone writes two events in one place.
    return one != other ? one < other : journal::identityOf(a) < journal::identityOf(b);
}

/// The one that no other has seen and replaced; of several the last by @p before.
template <class Value, class Before>
const Said<Value> &lastOf(const std::vector<Said<Value>> &all, const Seen &seen, Before before)
{
    const Said<Value> *last = nullptr;
    for (const Said<Value> &candidate : all) {
        const bool replaced = std::ranges::any_of(all, [&](const Said<Value> &other) {
            return seen.saw(*other.event, *candidate.event);
        });
        if (!replaced && (last == nullptr || before(*last, candidate)))
            last = &candidate;
    }
    return *last; // seeing is a strict order: something is always left
}

const auto byWriting = [](const auto &a, const auto &b) {
    return writtenBefore(*a.event, *b.event);
};

const auto byNumber = [](const SaidGoal &a, const SaidGoal &b) {
    const int one = a.value.goal.version;
    const int other = b.value.goal.version;
    return one != other ? one < other : writtenBefore(*a.event, *b.event);
};

/// Those that stand, of all that was said of one version.
std::vector<Rating> standing(const std::vector<SaidRating> &all, const Seen &seen)
{
    std::vector<std::vector<SaidRating>> places;
    for (const SaidRating &said : all) {
        const auto place = std::ranges::find_if(places, [&said](const auto &group) {
            return samePlace(group.front().value, said.value);
        });
        if (place == places.end())
            places.push_back({said});
        else
            place->push_back(said);
    }
    std::vector<Rating> ratings;
    ratings.reserve(places.size());
    for (const auto &group : places)
        ratings.push_back(lastOf(group, seen, byWriting).value);
    std::ranges::sort(ratings, {}, [](const Rating &rating) {
        return std::tie(rating.day, rating.role, rating.rater);
    });
    return ratings;
}

/// A word about an end repeats what its author knew: it takes back no review or weight that was
/// written meanwhile. Where nothing else is there (it came before the rest), it is what is known.
std::vector<SaidGoal> withoutTurns(const std::vector<SaidGoal> &said)
{
    std::vector<SaidGoal> words;
    std::ranges::copy_if(said, std::back_inserter(words),
                         [](const SaidGoal &one) { return !one.value.turn; });
    return words.empty() ? said : words;
}

/// Of those that had seen no other the first by its writing.
const std::string &authorOf(const std::vector<SaidGoal> &said, const Seen &seen)
{
    const SaidGoal *first = nullptr;
    for (const SaidGoal &candidate : said) {
        const bool repeats = std::ranges::any_of(
            said, [&](const SaidGoal &other) { return seen.saw(*candidate.event, *other.event); });
        if (!repeats && (first == nullptr || byWriting(candidate, *first)))
            first = &candidate;
    }
    return first->event->author;
}

GoalVersion versionOf(const std::vector<SaidGoal> &all, const std::vector<SaidRating> &ratings,
                      const Seen &seen)
{
    const std::vector<SaidGoal> said = withoutTurns(all);
    GoalVersion version{lastOf(said, seen, byWriting).value.goal, standing(ratings, seen),
                        authorOf(said, seen)};
    if (const Rating *agreed = latestBy(version, RatedBy::Together, {}))
        version.goal.now = agreed->level;
    return version;
}

void foldTurns(GoalRecord &record, const std::vector<SaidGoal> &goals, const Seen &seen)
{
    std::vector<Said<GoalTurn>> turns;
    for (const SaidGoal &said : goals) {
        if (!said.value.turn)
            continue;
        turns.push_back({said.event, *said.value.turn});
        turns.back().value.by = said.event->author;
    }
    if (turns.empty())
        return;
    std::ranges::sort(turns, byWriting);
    const auto repeats = std::ranges::unique(
        turns, [](const auto &a, const auto &b) { return !byWriting(a, b) && !byWriting(b, a); });
    turns.erase(repeats.begin(), repeats.end());
    for (const Said<GoalTurn> &said : turns)
        record.turns.push_back(said.value);
    const GoalTurn &last = lastOf(turns, seen, byWriting).value;
    if (ends(last.turn))
        record.ending = last;
}

} // namespace

const Rating *latestBy(const GoalVersion &version, RatedBy role, const std::string &rater)
{
    const auto found =
        std::find_if(version.ratings.rbegin(), version.ratings.rend(), [&](const Rating &rating) {
            return rating.role == role && (role == RatedBy::Together || rating.rater == rater);
        });
    return found != version.ratings.rend() ? &*found : nullptr;
}

std::optional<GoalRecord> foldGoal(std::span<const Event> events, const Seen &seen)
{
    std::vector<SaidGoal> goals;
    std::map<VersionKey, std::vector<SaidGoal>> byVersion;
    std::map<VersionKey, std::vector<SaidRating>> ratings;
    for (const Event &event : events) {
        if (const auto rating = readRating(event))
            ratings[rating->version].push_back({&event, *rating});
        const auto goal = event.kind == Kind::Goal ? agreedFromFields(event.fields) : std::nullopt;
        if (!goal)
            continue;
        goals.push_back({&event, *goal});
        byVersion[keyOf(goal->goal)].push_back(goals.back());
    }
    if (goals.empty())
        return std::nullopt;
    const SaidGoal &last = lastOf(goals, seen, byNumber);
    GoalRecord record{last.value.child, {}};
    for (const auto &[key, said] : byVersion) {
        if (key == keyOf(last.value.goal))
            record.inForce = record.versions.size();
        record.versions.push_back(versionOf(said, ratings[key], seen));
    }
    foldTurns(record, goals, seen);
    return record;
}

std::optional<child::ChildGoal> inForce(const GoalRecord &record)
{
    if (record.ending)
        return std::nullopt;
    return child::ChildGoal{record.child, record.current().goal.asChildGoal()};
}

} // namespace lidlark::goals
