import QtQuick
import QtTest
import Lidlark.Design

/// The held adult control. Its time is a property, so nothing here waits for a clock.
Item {
    id: page

    width: 360
    height: 640

    TestCase {
        id: test

        name: "Holding"
        when: windowShown

        Component { id: controlComponent; HeldAdultControl { text: "adult: hold" } }
        Component { id: spy; SignalSpy { signalName: "held" } }

        function cleanup() {
            Theme.reducedMotion = false
        }

        function test_a_short_tap_does_nothing() {
            const control = createTemporaryObject(controlComponent, page)
            const held = createTemporaryObject(spy, page, { target: control })
            mouseClick(control)
            keyClick(Qt.Key_Return)
            compare(held.count, 0)
            compare(control.progress, 0)
        }

        // Source: the project's own look page (reference/look/look.md, section 7): held 1.2 s.
        function test_it_opens_once_after_the_full_time() {
            const control = createTemporaryObject(controlComponent, page)
            const held = createTemporaryObject(spy, page, { target: control })
            control.heldMs = 1199
            compare(held.count, 0)
            control.heldMs = 1200
            compare(held.count, 1)
        }

        function test_holding_starts_the_time_and_letting_go_ends_it() {
            const control = createTemporaryObject(controlComponent, page)
            mousePress(control)
            verify(control.holding)
            control.heldMs = 600
            compare(control.progress, 0.5)
            mouseRelease(control)
            verify(!control.holding)
            compare(control.progress, 0)
        }

        function test_a_finger_that_slides_off_lets_go() {
            const control = createTemporaryObject(controlComponent, page)
            mousePress(control)
            mouseMove(control, control.width + 40, control.height + 40)
            verify(!control.holding)
            mouseRelease(control, control.width + 40, control.height + 40)
        }

        function test_a_key_can_hold_it_data() {
            return [{ tag: "return", key: Qt.Key_Return }, { tag: "space", key: Qt.Key_Space }]
        }
        function test_a_key_can_hold_it(row) {
            const control = createTemporaryObject(controlComponent, page)
            control.forceActiveFocus()
            keyPress(row.key)
            verify(control.holding)
            keyRelease(row.key)
            verify(!control.holding)
        }

        function test_the_ring_moves_in_three_steps_when_motion_is_reduced() {
            const control = createTemporaryObject(controlComponent, page)
            Theme.reducedMotion = true
            control.heldMs = 300
            compare(control.shownProgress, 0)
            control.heldMs = 500
            compare(control.shownProgress, 1 / 3)
            control.heldMs = 900
            compare(control.shownProgress, 2 / 3)
            Theme.reducedMotion = false
            compare(control.shownProgress, 0.75)
        }

        function test_the_target_is_as_large_as_asked() {
            const control = createTemporaryObject(controlComponent, page)
            verify(control.width >= 64)
            verify(control.height >= 76)
        }
    }
}
