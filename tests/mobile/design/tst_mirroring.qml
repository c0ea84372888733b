import QtQuick
import QtTest
import Lidlark.Design

/// Right-to-left: the layout turns, drawings do not; and the left hand's side of the cloth.
Item {
    id: page

    width: 360
    height: 640

    TestCase {
        id: test

        name: "Mirroring"
        when: windowShown

        Component { id: chipComponent; FilterChip { text: "Quiet"; picked: true } }
        Component { id: backComponent; SignButton { sign: "sign-back"; otherWaySign: "sign-on"; accessibleName: "Back" } }
        Component { id: footComponent; ActionFoot { width: 360; text: "Next step"; otherText: "Stop here" } }
        Component {
            id: gridComponent

            EvenGrid {
                width: 310
                spacing: 10

                Rectangle { implicitHeight: 20 }
                Rectangle { implicitHeight: 30 }
                Rectangle { implicitHeight: 40; visible: false }
                Rectangle { implicitHeight: 25 }
            }
        }
        Component { id: drawingComponent; Drawing { width: 60; height: 20; name: "three-colours" } }

        function mirror(item: Item) {
            item.LayoutMirroring.enabled = true
            item.LayoutMirroring.childrenInherit = true
        }

        function find(item, kind) {
            if (item instanceof kind)
                return item
            for (const child of Array.from(item.children)) {
                const found = find(child, kind)
                if (found)
                    return found
            }
            return null
        }

        function cleanup() {
            Theme.leftHanded = false
        }

        function test_the_peg_hangs_at_the_end() {
            const chip = createTemporaryObject(chipComponent, page)
            const peg = find(chip, PegMark)
            verify(peg.x > chip.width / 2)
            mirror(chip)
            verify(peg.x < chip.width / 2)
            verify(chip.leftPadding > chip.rightPadding)
        }

        function test_back_and_forward_swap_their_signs() {
            const back = createTemporaryObject(backComponent, page)
            compare(find(back, Drawing).name, "sign-back")
            mirror(back)
            compare(find(back, Drawing).name, "sign-on")
        }

        function test_the_main_action_lies_at_the_reading_start_or_by_the_left_hand_data() {
            return [
                { tag: "left to right", mirrored: false, leftHanded: false, slipFirst: true },
                { tag: "right to left", mirrored: true, leftHanded: false, slipFirst: false },
                { tag: "left hand", mirrored: false, leftHanded: true, slipFirst: false },
                { tag: "left hand, right to left", mirrored: true, leftHanded: true, slipFirst: true }
            ]
        }
        function test_the_main_action_lies_at_the_reading_start_or_by_the_left_hand(row) {
            const foot = createTemporaryObject(footComponent, page)
            Theme.leftHanded = row.leftHanded
            if (row.mirrored)
                mirror(foot)
            compare(find(foot, Slip).x < find(foot, StitchedLink).x, row.slipFirst)
        }

        function test_cells_are_even_and_turn_with_the_layout() {
            const grid = createTemporaryObject(gridComponent, page)
            verify(waitForItemPolished(grid))
            const cells = [grid.children[0], grid.children[1], grid.children[3]]
            compare(cells.map(cell => cell.width), [97, 97, 97].map(() => (310 - 20) / 3))
            compare(cells.map(cell => cell.height), [30, 30, 30])
            compare(grid.implicitHeight, 30)
            compare(cells[0].x, 0)
            grid.mirrored = true
            verify(waitForItemPolished(grid))
            compare(cells[2].x, 0)
            grid.columns = 1
            verify(waitForItemPolished(grid))
            compare(cells.map(cell => cell.y), [0, 30, 70])
            compare(grid.implicitHeight, 95)
        }

        function test_a_drawing_never_turns() {
            const drawing = createTemporaryObject(drawingComponent, page)
            waitForRendering(drawing)
            const before = grabImage(drawing)
            mirror(drawing)
            waitForRendering(drawing, 100)
            const after = grabImage(drawing)
            verify(Qt.colorEqual(before.pixel(10, 10), Theme.drawingInk))
            verify(Qt.colorEqual(after.pixel(10, 10), Theme.drawingInk))
            verify(Qt.colorEqual(after.pixel(30, 10), Theme.tint))
        }

        function test_a_missing_drawing_says_so() {
            const drawing = createTemporaryObject(drawingComponent, page)
            verify(!drawing.missing)
            drawing.name = "no-such-drawing"
            verify(drawing.missing)
            drawing.name = ""
            verify(!drawing.missing)
        }
    }
}
