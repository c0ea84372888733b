pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge

/// Whatever could not be done, from wherever it is said.
QtObject {
    id: failures

    required property Household household
    required property Sitting sitting
    required property PlayInHand playInHand
    required property CrewLife crewLife
    property list<QtObject> heard: [
        Connections {
            target: failures.household

            function onFailed(problem: string) {
                failures.failed(problem)
            }
        },
        Connections {
            target: failures.sitting

            function onFailed(problem: string) {
                failures.failed(problem)
            }
        },
        Connections {
            target: failures.playInHand

            function onFailed(problem: string) {
                failures.failed(problem)
            }
        },
        Connections {
            target: failures.crewLife

            function onFailed(problem: string) {
                failures.failed(problem)
            }
        }
    ]

    signal failed(string problem)
}
