pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// Gallery: the box tray and the tray that fills.
Column {
    width: parent ? parent.width : implicitWidth
    spacing: Theme.gap

    Tray {
        WellRow {
            TrayWell {
                drawing: "item-pegs"
                text: "pegs"
                count: "6"
            }

            TrayWell {
                drawing: "item-balloon"
                text: "balloons"
                count: "1"
                look: CountChip.NeedsLook
                tag: "low"
            }

            TrayWell {
                drawing: "item-dropper"
                text: "dropper"
                count: "none"
                look: CountChip.None
            }
        }
    }

    Tray {
        lined: true
        spacing: Theme.cardPadding

        WellRow {
            columns: 0
            spacing: Theme.cardPadding

            HomeWell {
                id: lights

                pieceDrawings: ["eye-home0", "eye-home1", "eye-home2", "eye-home3"]
                placeDrawing: "eye-place"
                expected: 6
                home: 4
                text: lights.home + " of 6"
                accessibleName: "Stick-on eyes, " + lights.text
                onClicked: lights.home = (lights.home + 1) % 7
            }

            HomeWell {
                id: pegs

                drawing: "item-pegs"
                expected: 1
                text: pegs.home + " of 1"
                accessibleName: "Peg, " + pegs.text
                onClicked: pegs.home = 1 - pegs.home
            }
        }

        LidWell {
            id: lid

            text: "Lid, last of all"
            onClicked: lid.home = !lid.home
        }
    }
}
