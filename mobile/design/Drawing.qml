pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// A drawing of the app in the colours of the theme. `alt` says what it shows; without it the
/// drawing is decoration, and a screen reader passes it by.
PaintedDrawing {
    id: drawing

    property string alt: ""
    property bool middleOnly: false
    property bool cover: false

    fit: drawing.cover ? PaintedDrawing.Cover : drawing.middleOnly ? PaintedDrawing.Middle : PaintedDrawing.Whole
    leftHanded: Theme.childLeftHanded
    inkColour: Theme.drawingInk
    tintColour: Theme.tint
    paperColour: Theme.drawingPaper

    Accessible.role: Accessible.Graphic
    Accessible.name: drawing.alt
    Accessible.ignored: drawing.alt.length === 0
}
