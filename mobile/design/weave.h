#pragma once

#include "theme_choices.h"

#include <QtCore/QRectF>

class QPainter;

namespace lidlark::design {

/// Draws the threads of a place's cloth over @p area with the painter's pen.
/// Four weaves, so that a cloth can be told without its colour: twill, herringbone, check, floats.
void paintWeave(QPainter &painter, const QRectF &area, ThemeChoices::Place place);

} // namespace lidlark::design
