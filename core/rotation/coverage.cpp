#include "core/rotation/coverage.h"

#include "core/rotation/goal_link.h"

#include <algorithm>

namespace lidlark::rotation {

int gainOf(const Curve &curve, int from, int more)
{
    int gain = 0;
    int start = 0;
    for (const Segment &segment : curve) {
        const int end = start + segment.width;
        const int inside = std::min(from + more, end) - std::max(from, start);
        gain += std::max(inside, 0) * segment.slope;
        start = end;
    }
    return gain;
}

std::vector<Practice> practiceOf(const catalogue::Activity &activity)
{
    std::vector<Practice> practice;
    const auto add = [&](catalogue::Skill skill, int minutes) {
        if (std::ranges::count(practice, skill, &Practice::skill) == 0)
            practice.push_back({skill, minutes});
    };
    for (const catalogue::Skill skill : activity.skillsMain)
        add(skill, activity.minutes.play);
    for (const catalogue::Skill skill : activity.skillsAlso)
        add(skill, activity.minutes.play / 2);
    return practice;
}

std::vector<Curve> weekCurves(const Question &question)
{
    std::vector<Curve> curves(catalogue::skillCount);
    for (std::size_t i = 0; i < catalogue::skillCount; ++i) {
        const auto skill = static_cast<catalogue::Skill>(i);
        const int weight = isGoalSkill(skill, question.child) ? goalSkillWeight : 1;
        int practised = question.minutesThisWeek[i];
        for (const Segment &segment : weekSegments) {
            const int left = segment.width - std::clamp(practised, 0, segment.width);
            practised -= segment.width - left;
            if (left > 0)
                curves[i].push_back({left, segment.slope * weight});
        }
    }
    return curves;
}

} // namespace lidlark::rotation
