#pragma once

#include <QJsonObject>

#include "core/rotation/menu.h"
#include "core/safety/room.h"

namespace lidlark::mobile {

/// How a sitting is kept on the phone between two starts: plain JSON, read carefully. What cannot
/// be read counts as not said.
QJsonObject toJson(const safety::Room &room);
safety::Room roomFrom(const QJsonObject &object);

QJsonObject toJson(const rotation::Filters &filters);
rotation::Filters filtersFrom(const QJsonObject &object);

} // namespace lidlark::mobile
