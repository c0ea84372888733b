#pragma once

#include <QString>
#include <QStringList>

#include "core/goals/goal_record.h"

namespace lidlark::mobile {

/// "Getting dressed".
QString areaWords(catalogue::LifeArea area);

/// The parts of life a goal is about, on one line; empty: nobody said.
QString areaLine(const child::Goal &goal);

/// All that was said of these words, newest first, a line each.
QStringList ratingLines(const goals::GoalVersion &version);

/// What became of a goal, newest first: who, when and how, and under it their own words.
QStringList turnLines(const goals::GoalRecord &record);

} // namespace lidlark::mobile
