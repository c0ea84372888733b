pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// A heading above pictures that keep their size: in the first of its roles that is not higher than
/// its place, or else in the last.
Words {
    id: fitting

    required property list<int> roles
    required property real mostHeight

    strong: true
    heading: true
    role: {
        for (let i = 0; i < tries.count; ++i) {
            const trial = tries.itemAt(i) as Words
            if (trial && trial.implicitHeight <= fitting.mostHeight)
                return trial.role
        }
        return fitting.roles[fitting.roles.length - 1]
    }

    Repeater {
        id: tries

        model: fitting.roles

        Words {
            required property int modelData

            visible: false
            width: fitting.width
            role: modelData
            strong: true
            text: fitting.text
        }
    }
}
