pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// A window of the size of a phone in the hand; never smaller than the smallest supported screen.
Window {
    width: 360
    height: 740
    minimumWidth: 320
    minimumHeight: 320
    visible: true
    color: Theme.sheet
}
