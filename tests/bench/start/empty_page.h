#pragma once

namespace lidlark::bench {

/// The floor of any Qt Quick Controls program: a window with one label and one button in it.
inline constexpr auto emptyPage = R"(
import QtQuick
import QtQuick.Controls.Basic
ApplicationWindow {
    visible: true; width: 360; height: 640
    Column { Label { text: "Today" } Button { text: "Play" } }
})";

} // namespace lidlark::bench
