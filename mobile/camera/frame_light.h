#pragma once

#include <QImage>
#include <QVideoFrame>

namespace lidlark::mobile {

/// What a camera gave, as a picture of its own. Of the usual kinds only the light is taken, as it
/// lies there: squares have no colour, and a phone need not reckon one out.
/// @returns a null picture where the frame cannot be read.
QImage pictureOf(QVideoFrame frame);

} // namespace lidlark::mobile
