#pragma once

#include <QString>

#include "core/catalogue/activity.h"
#include "core/rotation/session_arc.h"
#include "mobile/bridge/video_desk.h"

namespace lidlark::mobile {

/// "Monday, 25 January, 10:00".
QString whenWords(Day day, int minuteOfDay);
/// "To arrive", "The work", "To part": where in the session an activity stands.
QString placeWords(rotation::ArcPlace place);
/// Where the camera looks.
QString cameraWords(catalogue::View view);
/// "Dropper Constellation"; the id where the catalogue has no such entry.
QString activityName(const Household &household, const ActivityId &activity);
/// "Dropper".
QString itemName(const Household &household, const ItemId &item);
/// Why an activity cannot stand in a plan.
QString problemWords(const Household &household, const usecase::PlanProblem &problem);

} // namespace lidlark::mobile
