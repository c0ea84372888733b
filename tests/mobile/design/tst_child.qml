import QtQuick
import QtTest
import Lidlark.Design

/// What a child presses, and the tray that fills.
Item {
    id: page

    width: 360
    height: 640

    TestCase {
        id: test

        name: "Child"
        when: windowShown

        Component { id: tileComponent; ChildTile { width: 320; height: Theme.mm(20); text: "Resting"; note: "slow, floppy" } }
        Component {
            id: wellComponent

            HomeWell {
                width: 140
                pieceDrawings: ["eye-home0", "eye-home1"]
                placeDrawing: "eye-place"
                expected: 6
                home: 4
                text: "4 of 6"
                accessibleName: "Stick-on eyes, 4 of 6"
            }
        }
        Component { id: stopComponent; FullStop { width: 320; height: 568; lead: "Two eyes are missing."; answers: ["Found", "Floor checked"] } }
        Component { id: belowComponent; PaperButton { width: 320; height: 568; text: "Below" } }
        Component { id: spy; SignalSpy {} }

        function all(item, kind) {
            let found = item instanceof kind ? [item] : []
            for (const child of Array.from(item.children))
                found = found.concat(all(child, kind))
            return found
        }

        function test_the_whole_tile_answers() {
            const tile = createTemporaryObject(tileComponent, page)
            const chosen = createTemporaryObject(spy, page, { target: tile, signalName: "chosen" })
            for (const corner of [[2, 2], [tile.width - 2, 2], [2, tile.height - 2], [tile.width - 2, tile.height - 2]])
                mouseClick(tile, corner[0], corner[1])
            compare(chosen.count, 4)
        }

        function test_a_touch_too_short_for_this_home_is_no_answer() {
            const tile = createTemporaryObject(tileComponent, page, { minimumTouchMs: 100000 })
            const chosen = createTemporaryObject(spy, page, { target: tile, signalName: "chosen" })
            mouseClick(tile)
            compare(chosen.count, 0)
            tile.forceActiveFocus()
            keyClick(Qt.Key_Return)
            compare(chosen.count, 1)
        }

        function test_a_long_touch_asks_what_it_says_and_is_no_answer() {
            const tile = createTemporaryObject(tileComponent, page, { longTouchMs: 50 })
            const chosen = createTemporaryObject(spy, page, { target: tile, signalName: "chosen" })
            const lingered = createTemporaryObject(spy, page, { target: tile, signalName: "lingered" })
            mousePress(tile)
            lingered.wait()
            mouseRelease(tile)
            compare(chosen.count, 0)
            mouseClick(tile)
            compare(chosen.count, 1)
            compare(lingered.count, 1)
        }

        function test_without_a_voice_every_touch_is_an_answer_however_long() {
            const tile = createTemporaryObject(tileComponent, page)
            const chosen = createTemporaryObject(spy, page, { target: tile, signalName: "chosen" })
            mousePress(tile)
            wait(1200)
            mouseRelease(tile)
            compare(chosen.count, 1)
        }

        function test_only_the_chosen_tile_has_the_peg() {
            const tile = createTemporaryObject(tileComponent, page)
            verify(!all(tile, PegMark)[0].visible)
            tile.picked = true
            verify(all(tile, PegMark)[0].visible)
        }

        // Source: the project's own look page (reference/look/look.md, section 5): no two eyes side by side.
        function test_pieces_lie_in_a_zigzag() {
            const well = createTemporaryObject(wellComponent, page)
            waitForRendering(well)
            const pieces = all(well, HomePiece)
            compare(pieces.length, 6)
            compare(pieces.filter(piece => piece.home).length, 4)
            for (let left = 0; left < 6; left += 2)
                verify(Math.abs(pieces[left].y - pieces[left + 1].y) >= pieces[left].height / 4)
            for (const piece of pieces)
                verify(piece.x >= 0 && piece.x + piece.width <= piece.parent.width && piece.y >= 0)
        }

        function test_a_full_stop_lets_nothing_through() {
            const below = createTemporaryObject(belowComponent, page)
            const clicked = createTemporaryObject(spy, page, { target: below, signalName: "clicked" })
            const stop = createTemporaryObject(stopComponent, page)
            const answered = createTemporaryObject(spy, page, { target: stop, signalName: "answered" })
            mouseClick(stop, 5, 5)
            compare(clicked.count, 0)
            mouseClick(all(stop, Slip)[0])
            mouseClick(all(stop, StitchedLink)[0])
            compare(answered.signalArguments.map(call => call[0]), [0, 1])
        }
    }
}
