#pragma once

#include "core/rotation/menu_problem.h"

#include <random>

namespace lidlark::rotation::samples {

/// What a random problem is like.
struct ProblemShape {
    int entries = 10;
    int worthMost = 40; ///< Small: many ties.
    int families = 8;
    int skills = 6;
    int items = 3;
    int newPercent = 30;
    int friendPercent = 40;
    int withoutTablePercent = 40;
    int messyPercent = 20;
    int heldBackPercent = 0;
};

/// A problem that the seed and the shape alone decide.
inline MenuProblem randomProblem(const ProblemShape &shape, std::uint32_t seed)
{
    std::mt19937 source(seed);
    const auto below = [&](int limit) {
        return static_cast<int>(source() % static_cast<std::uint32_t>(limit));
    };
    const auto happens = [&](int percent) { return below(100) < percent; };
    MenuProblem problem;
    for (int i = 0; i < shape.skills; ++i) {
        const int last = 1 + below(3);
        problem.curves.push_back({{2 + below(5), last + 1 + below(4)}, {3 + below(8), last}});
    }
    for (int i = 0; i < shape.items; ++i)
        problem.stock.push_back(2 + below(5));
    for (int i = 0; i < shape.entries; ++i) {
        Entry entry;
        entry.worth = below(shape.worthMost + 1) - shape.worthMost / 4;
        const int skill = below(shape.skills);
        entry.amounts.push_back({skill, 2 + below(6)});
        entry.amounts.push_back({(skill + 1 + below(shape.skills - 1)) % shape.skills, 2});
        if (shape.items > 0 && happens(40))
            entry.needs.push_back({below(shape.items), 1 + below(3)});
        entry.family = below(shape.families);
        entry.isNew = happens(shape.newPercent);
        entry.isKnownFriend = !entry.isNew && happens(shape.friendPercent);
        entry.isWithoutTable = happens(shape.withoutTablePercent);
        entry.isMessy = happens(shape.messyPercent);
        entry.isHeldBack = happens(shape.heldBackPercent);
        problem.entries.push_back(entry);
    }
    return problem;
}

} // namespace lidlark::rotation::samples
