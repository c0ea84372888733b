import QtQuick
import QtTest
import Lidlark.Design

/// What holds for everything that is pressed.
Item {
    id: page

    width: 360
    height: 640

    TestCase {
        id: test

        name: "Pressing"
        when: windowShown

        Component { id: paperButton; PaperButton { text: "Play" } }
        Component { id: signedButton; PaperButton { text: "Play"; sign: "sign-box"; patch: true } }
        Component { id: slip; Slip { text: "Next" } }
        Component { id: link; StitchedLink { text: "On" } }
        Component { id: chip; FilterChip { text: "Go" } }
        Component { id: key; NumberKey { text: "1" } }
        Component { id: sign; SignButton { accessibleName: "Back" } }
        Component { id: speech; SpeechButton { accessibleName: "Read" } }
        Component { id: kiteRow; KiteRow { text: "Steady" } }
        Component { id: linkRow; LinkRow { text: "Pegs" } }
        Component { id: choice; ChoiceRow { text: "Dark" } }
        Component { id: offer; OfferCard { name: "Slow Oars" } }
        Component { id: grade; GradeCard { text: "Easier" } }
        Component { id: tab; Tab { text: "Box" } }
        Component { id: yes; BigYes { answer: "Yes" } }
        Component { id: caution; CautionButton { text: "It burst" } }
        Component { id: well; TrayWell { text: "pegs" } }
        Component { id: homeWell; HomeWell { text: "0 of 1"; accessibleName: "Peg" } }
        Component { id: lid; LidWell { text: "Lid" } }
        Component { id: names; NameTagLine { names: ["Fin"] } }
        Component { id: spy; SignalSpy {} }

        function pressables() {
            return [paperButton, signedButton, slip, link, chip, key, sign, speech, kiteRow, linkRow, choice, offer,
                    grade, tab, yes, caution, well, homeWell, lid, names]
        }

        function rows() {
            const names = ["paperButton", "signedButton", "slip", "link", "chip", "key", "sign", "speech", "kiteRow",
                           "linkRow", "choice", "offer", "grade", "tab", "yes", "caution", "well", "homeWell", "lid", "names"]
            return names.map((name, index) => ({ tag: name, control: test.pressables()[index] }))
        }

        function spyOn(target, signalName) {
            return createTemporaryObject(spy, page, { target: target, signalName: signalName })
        }

        function cleanup() {
            Theme.textScale = 1
        }

        function test_target_is_large_enough_data() { return rows() }
        // Source: the project's own look page (reference/look/look.md, section 3): 48 or more.
        function test_target_is_large_enough(row) {
            const item = createTemporaryObject(row.control, page)
            verify(item.width >= Theme.touchTarget, item.width)
            verify(item.height >= Theme.touchTarget, item.height)
            Theme.textScale = 2
            verify(item.height >= Theme.touchTarget, item.height)
        }

        function test_a_touch_is_a_click_data() { return rows() }
        function test_a_touch_is_a_click(row) {
            const item = createTemporaryObject(row.control, page)
            const clicked = spyOn(item, "clicked")
            mouseClick(item)
            compare(clicked.count, 1)
        }

        function test_return_and_space_are_a_click_data() { return rows() }
        function test_return_and_space_are_a_click(row) {
            const item = createTemporaryObject(row.control, page)
            const clicked = spyOn(item, "clicked")
            item.forceActiveFocus(Qt.TabFocusReason)
            verify(item.visualFocus)
            keyClick(Qt.Key_Return)
            keyClick(Qt.Key_Enter)
            keyClick(Qt.Key_Space)
            compare(clicked.count, 3)
        }

        function test_it_has_a_name_data() { return rows() }
        function test_it_has_a_name(row) {
            const item = createTemporaryObject(row.control, page)
            verify(item.Accessible.name.length > 0)
        }

        function test_not_now_cannot_be_pressed_data() {
            return rows().filter(row => ["paperButton", "slip", "link", "chip", "linkRow", "choice", "grade"].includes(row.tag))
        }
        function test_not_now_cannot_be_pressed(row) {
            const item = createTemporaryObject(row.control, page, { notNowReason: "The dough is drying." })
            const clicked = spyOn(item, "clicked")
            mouseClick(item)
            item.forceActiveFocus()
            keyClick(Qt.Key_Return)
            compare(clicked.count, 0)
            verify(test.textsIn(item).includes("The dough is drying."))
        }

        function textsIn(item) {
            let found = item instanceof Text && item.visible ? [item.text] : []
            for (const child of Array.from(item.children))
                found = found.concat(textsIn(child))
            return found
        }
    }
}
