pragma ComponentBehavior: Bound

import QtQuick
import Lidlark.Bridge
import Lidlark.Design
import Lidlark.Welcome

/// What nobody at home may meet. "Don't know" counts the careful way.
Column {
    id: page

    required property WelcomeViewModel answers

    spacing: Theme.sectionGap

    Words {
        width: page.width
        text: SafetyWords.of(QT_TRANSLATE_NOOP("SafetyWords", "Anyone who lives here counts, not only your child."))
    }

    AvoidQuestion {
        objectName: "latex"
        width: page.width
        question: SafetyWords.of(QT_TRANSLATE_NOOP("SafetyWords", "Must anyone avoid latex?"))
        note: SafetyWords.of(QT_TRANSLATE_NOOP("SafetyWords", "It is in balloons, rubber bands and many soft balls. Spina bifida counts as yes, and so do many operations."))
        answer: page.answers.latex
        onSaid: answer => page.answers.latex = answer
    }

    AvoidQuestion {
        objectName: "wheat"
        width: page.width
        question: SafetyWords.of(QT_TRANSLATE_NOOP("SafetyWords", "Must anyone avoid wheat?"))
        note: SafetyWords.of(QT_TRANSLATE_NOOP("SafetyWords", "Bought dough is mostly wheat. A wheat allergy counts as yes, and so does coeliac disease."))
        answer: page.answers.wheat
        onSaid: answer => page.answers.wheat = answer
    }

    Words {
        width: page.width
        role: Theme.Reason
        soft: true
        text: qsTr("\"Don't know\" is a good answer. It counts as yes until somebody knows.")
    }
}
