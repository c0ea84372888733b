pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Design

/// First line first (safety.md EM-01, EM-02, EM-05): no manoeuvres, no country's number built in.
FullStop {
    id: screen

    signal done()

    lead: qsTr("Call your local emergency number.")
    text: qsTr("Coughing hard? Let them go on coughing and stay with them. Do not feel about in the mouth. Cannot cough, cry, speak or breathe, or will not wake: that is an emergency. If something was swallowed, call the emergency number or the poison line now, even if your child seems well.")
    answers: [qsTr("Back to the floor check")]
    onAnswered: screen.done()
}
