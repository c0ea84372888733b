#pragma once

#include "theme_choices.h"

#include <QtGui/QFont>

namespace lidlark::design {

/// How the reader set the text.
struct Reading {
    double textScale = 1.0;    ///< 1 to 2.
    bool arabicScript = false; ///< Naskh instead of Andika, with taller lines.
};

/// One role of text, ready to be set.
struct TypeStyle {
    QFont font;
    double lineHeight = 0.0; ///< px from baseline to baseline.
    double lift = 0.0;       ///< px to move the lines up, so that capitals sit in their middle.
    double trim = 0.0;       ///< px to take off below: Qt gives the last line its natural height.
};

/// Running text grows by the scale itself; titles and button words, large already, by 62 % of it.
/// Source: the project's own look page (reference/look/look.md, section 2).
double scaledRunning(double pixels, double textScale);
double scaledTitle(double pixels, double textScale);

/// Whether a role is set in bold unless asked otherwise.
bool boldByRole(ThemeChoices::Role role);

/// The style of @p role for this reader. Never under 14 px.
/// Source of sizes, lines and weights: reference/look/look.md, section 2.
TypeStyle typeStyle(ThemeChoices::Role role, bool bold, const Reading &reading);

} // namespace lidlark::design
