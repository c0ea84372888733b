import QtQuick
import QtTest
import Lidlark.Design

/// What the living box is made of: a question, steps on a path, the chart of use.
Item {
    id: page

    width: 360
    height: 640

    TestCase {
        id: test

        name: "LivingBox"
        when: windowShown

        Component {
            id: chartComponent

            UseChart {
                width: 328
                pieces: [0, 1, 2, 4]
                labels: ["21 December", "", "January", "this week"]
                text: "Pegs: 1 in the week of 28 December."
            }
        }
        Component {
            id: askComponent

            AskCard {
                width: 328
                text: "Same one, or two?"
                answers: ["The same one", "Two"]
            }
        }
        Component {
            id: pathComponent

            StepPath {
                width: 328
                steps: ["Asked for", "Seen", "Packed"]
                current: 1
                note: "Morven, Tuesday"
            }
        }
        Component {
            id: wellComponent

            Tray {
                width: 320

                WellRow {
                    columns: 3

                    TrayWell { text: "pegs"; count: "6"; tag: "low" }
                    TrayWell { text: "dough"; count: "1"; tag: "throw away" }
                    TrayWell { text: "eyes"; count: "4 or 5"; tag: "which?" }
                }
            }
        }
        Component { id: spy; SignalSpy {} }

        function all(item, type) {
            let found = item instanceof type ? [item] : []
            for (const child of Array.from(item.children)) {
                if (child.visible)
                    found = found.concat(all(child, type))
            }
            return found
        }

        function words(item) {
            return all(item, Text).map(text => text.text)
        }

        function cleanup() {
            Theme.textScale = 1
        }

        function test_bars_are_as_high_as_their_numbers() {
            const chart = createTemporaryObject(chartComponent, page)
            const bars = all(chart, UseBar)
            compare(bars.length, 4)
            const heights = bars.map(bar => Math.round(bar.pieces * bar.unit))
            compare(heights[2], 2 * heights[1])
            compare(heights[3], 4 * heights[1])
            verify(words(chart).includes("4"))
            verify(words(chart).includes("January"))
            verify(words(chart).includes("this week"))
        }

        // Time runs in the direction of reading.
        function test_time_runs_as_the_reader_reads() {
            const chart = createTemporaryObject(chartComponent, page)
            let bars = all(chart, UseBar)
            verify(bars[0].x < bars[3].x)
            chart.LayoutMirroring.enabled = true
            chart.LayoutMirroring.childrenInherit = true
            bars = all(chart, UseBar)
            verify(bars[0].x > bars[3].x)
        }

        function test_many_pieces_keep_the_chart_low() {
            const chart = createTemporaryObject(chartComponent, page)
            const before = chart.height
            chart.pieces = [90, 3, 0, 1]
            verify(chart.implicitHeight <= before + 90)
            compare(all(chart, UseBar)[0].height, all(chart, UseBar)[3].height)
        }

        function test_answers_weigh_the_same() {
            const card = createTemporaryObject(askComponent, page)
            const answered = createTemporaryObject(spy, page, { target: card, signalName: "answered" })
            waitForRendering(card)
            const keys = all(card, PaperButton)
            compare(keys.length, 2)
            compare(keys[0].width, keys[1].width)
            compare(keys[0].height, keys[1].height)
            mouseClick(keys[1])
            compare(answered.signalArguments[0][0], 1)
            card.answers = []
            compare(all(card, PaperButton).length, 0)
        }

        function test_the_step_that_stands_has_its_line() {
            const path = createTemporaryObject(pathComponent, page)
            const bold = all(path, Text).filter(text => text.font.bold)
            compare(bold.length, 1)
            compare(bold[0].text, "Seen")
            verify(words(path).includes("Morven, Tuesday"))
        }

        // A mark never lies on the name or leaves its well.
        function test_a_long_mark_stays_in_its_well() {
            const tray = createTemporaryObject(wellComponent, page)
            waitForRendering(tray)
            for (const well of all(tray, TrayWell)) {
                for (const tag of all(well, CountTag).filter(tag => tag.text.length > 0)) {
                    const at = tag.mapToItem(well, 0, 0)
                    verify(at.x >= -1 && at.x + tag.width <= well.width + 1, tag.text + " from " + at.x + ", " + tag.width + " wide, in " + well.width)
                    const name = all(well, Text).find(text => text.text === well.text)
                    const low = name.mapToItem(well, 0, 0).y
                    verify(at.y >= low + name.height - 4 || at.y + tag.height <= low + 6, tag.text + " at " + at.y + ", " + tag.height + " high; " + name.text + " at " + low + ", " + name.height + " high")
                }
            }
        }
    }
}
