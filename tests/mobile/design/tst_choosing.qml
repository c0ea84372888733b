import QtQuick
import QtTest
import Lidlark.Design

/// Chips, rows and the peg that marks what is chosen.
Item {
    id: page

    width: 360
    height: 640

    TestCase {
        id: test

        name: "Choosing"
        when: windowShown

        Component { id: chipComponent; FilterChip { text: "Quiet" } }
        Component { id: pegComponent; PegMark {} }
        Component {
            id: rowsComponent

            Column {
                width: 300

                ChoiceRow { width: 300; text: "Light"; exclusive: true; checked: true }
                ChoiceRow { width: 300; text: "Dark"; exclusive: true }
            }
        }
        Component {
            id: exceptionComponent

            ExceptionRow {
                width: 328
                name: "Stick-on eyes"
                words: ["used up", "lost", "broken", "dried out", "still in use"]
                countQuestion: "How many?"
                countTo: 2
            }
        }
        Component { id: spy; SignalSpy {} }

        function pegIn(item) {
            if (item instanceof PegMark)
                return item
            for (const child of Array.from(item.children)) {
                const found = pegIn(child)
                if (found)
                    return found
            }
            return null
        }

        function all(item, kind) {
            let found = item instanceof kind ? [item] : []
            for (const child of Array.from(item.children))
                found = found.concat(all(child, kind))
            return found
        }

        function cleanup() {
            Theme.reducedMotion = false
        }

        function test_a_chip_asks_and_shows_its_peg_once_it_is_picked() {
            const chip = createTemporaryObject(chipComponent, page)
            const plainWidth = chip.width
            verify(!pegIn(chip).visible)
            mouseClick(chip)
            verify(!chip.checked) // nobody has picked it yet
            verify(!pegIn(chip).visible)
            chip.picked = true
            verify(chip.checked)
            verify(pegIn(chip).visible)
            verify(chip.width > plainWidth)
            mouseClick(chip)
            verify(chip.checked)
            chip.picked = false
            verify(!chip.checked)
            compare(chip.width, plainWidth)
        }

        function test_the_peg_is_in_place_at_once_when_motion_is_reduced() {
            Theme.reducedMotion = true
            const peg = createTemporaryObject(pegComponent, page)
            peg.clipped = true
            compare(peg.drop, 0)
        }

        function test_a_peg_that_was_there_from_the_start_does_not_move() {
            const peg = createTemporaryObject(pegComponent, page, { clipped: true })
            compare(peg.drop, 0)
        }

        function test_one_of_several_stays_chosen() {
            const rows = createTemporaryObject(rowsComponent, page)
            const light = rows.children[0]
            const dark = rows.children[1]
            mouseClick(dark)
            verify(dark.checked && !light.checked)
            mouseClick(dark)
            verify(dark.checked)
        }

        function test_an_exception_is_told_and_not_decided_here() {
            const row = createTemporaryObject(exceptionComponent, page)
            const word = createTemporaryObject(spy, page, { target: row, signalName: "wordChosen" })
            const count = createTemporaryObject(spy, page, { target: row, signalName: "countChosen" })
            const chips = all(row, FilterChip)
            compare(chips.length, 5)
            mouseClick(chips[1])
            compare(word.signalArguments[0][0], 1)
            verify(!chips[1].picked)
            row.currentWord = 1
            verify(chips[1].picked)
            mouseClick(chips[1])
            verify(chips[1].picked)
            const keys = all(row, NumberKey)
            compare(keys.length, 2)
            tryVerify(() => keys[1].height > 0)
            mouseClick(keys[1])
            compare(count.signalArguments[0][0], 2)
        }
    }
}
