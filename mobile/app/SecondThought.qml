pragma ComponentBehavior: Bound

import QtQml
import Lidlark.Bridge

/// A play whose end was taken back asks what became of it again; one that has ended after all does
/// not.
QtObject {
    id: thought

    required property PlayInHand playInHand

    signal begun()
    signal wanted(string where)

    /// @param where else the page to go to.
    function goOn(where: string) {
        const wasOpen = thought.playInHand.active
        thought.playInHand.reload()
        if (thought.playInHand.active && !wasOpen) {
            if (!thought.playInHand.fromBefore)
                thought.playInHand.startPuttingBack()
            thought.begun()
        } else if (wasOpen && !thought.playInHand.active) {
            thought.wanted("today")
        } else {
            thought.wanted(where)
        }
    }
}
