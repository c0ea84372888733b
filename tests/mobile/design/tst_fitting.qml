import QtQuick
import QtTest
import Lidlark.Design

/// Nothing is cut: every component at the narrowest screen and the largest text.
Item {
    id: page

    width: 360
    height: 640

    TestCase {
        id: test

        name: "Fitting"
        when: windowShown

        Component { id: galleryComponent; Gallery {} }
        Component {
            id: footComponent

            Sheet {
                width: 320
                height: 568
                foot: YesFoot {
                    question: "All back in the box?"
                    answer: "Yes, all back"
                    otherText: "Something’s different"
                }
            }
        }

        function texts(item) {
            let found = item instanceof Text ? [item] : []
            for (const child of Array.from(item.children)) {
                if (child.visible)
                    found = found.concat(texts(child))
            }
            return found
        }

        function cleanup() {
            Theme.textScale = 1
            Theme.scheme = Theme.Light
            Theme.arabicScript = false
        }

        function test_no_text_is_cut_or_leaves_the_screen_data() {
            return [
                { tag: "small screen", width: 320, scale: 1, arabic: false, mirrored: false },
                { tag: "small screen, large text", width: 320, scale: 2, arabic: false, mirrored: false },
                { tag: "large text, right to left", width: 320, scale: 2, arabic: false, mirrored: true },
                { tag: "in Naskh", width: 320, scale: 1.6, arabic: true, mirrored: true }
            ]
        }
        function test_no_text_is_cut_or_leaves_the_screen(row) {
            Theme.textScale = row.scale
            Theme.arabicScript = row.arabic
            const gallery = createTemporaryObject(galleryComponent, page, { width: row.width, height: 9000 })
            gallery.LayoutMirroring.enabled = row.mirrored
            gallery.LayoutMirroring.childrenInherit = true
            waitForRendering(gallery)
            const all = texts(gallery)
            verify(all.length > 100)
            for (const words of all) {
                const corner = words.mapToItem(gallery, 0, 0)
                verify(!words.truncated, words.text)
                verify(words.contentWidth * words.scale <= words.width + 1, words.text + ": " + words.contentWidth + " in " + words.width)
                verify(corner.x >= -1, words.text + " starts at " + corner.x)
                verify(corner.x + words.contentWidth * words.scale <= row.width + 1, words.text + " ends at " + (corner.x + words.contentWidth))
            }
        }

        function test_lines_are_as_high_as_the_look_says() {
            const gallery = createTemporaryObject(galleryComponent, page, { width: 360, height: 600 })
            for (const words of texts(gallery)) {
                if (words.text.length > 0)
                    compare(words.height, words.lineCount * words.lineHeight + (words instanceof SectionWords ? Theme.gap : 0), words.text)
            }
        }

        // Source: the project's own look page (reference/look/look.md, section 2): the foot never takes
        // more than 40 % of the height.
        function test_the_foot_leaves_room_for_the_page() {
            Theme.textScale = 2
            const sheet = createTemporaryObject(footComponent, page)
            waitForRendering(sheet)
            verify(sheet.footHeight > 0)
            verify(sheet.footHeight <= sheet.height * 0.4)
        }
    }
}
