#pragma once

#include "theme_choices.h"

#include <QtGui/QColor>

namespace lidlark::design {

/// Every colour of one look, named for what it means. Equal palettes draw equal pictures.
struct Palette {
    QColor sheet;        ///< The page.
    QColor card;         ///< Slips, offers and rows that lie on the page.
    QColor cardEdge;     ///< Edge of a card: quiet, or black where contrast is high.
    QColor edge;         ///< Quiet rule between rows.
    QColor edgeLow;      ///< Thickness of the paper, seen below a card.
    QColor line;         ///< Edge of what can be pressed: 3:1 or more on sheet and card.
    QColor ink;          ///< Text.
    QColor inkSoft;      ///< Second line of text.
    QColor picture;      ///< Ground under every drawing.
    QColor pictureText;  ///< Text straight on a picture ground.
    QColor pictureSoft;  ///< Second line on a picture ground.
    QColor tileEdge;     ///< Edge of a child's tile.
    QColor tint;         ///< Straw: drawings, pegs, tags. Never text.
    QColor drawingInk;   ///< Line inside a drawing.
    QColor drawingPaper; ///< Paper inside a drawing.
    QColor slip;         ///< Paper on cloth: the main action.
    QColor slipText;     ///< Text on a slip.
    QColor slipSoft;     ///< Second line on a slip.
    QColor safety;       ///< The reverse block of a caution.
    QColor safetyText;   ///< Text on that block.
    QColor cloth;        ///< The place's cloth.
    QColor clothText;    ///< Text and signs straight on the cloth.
    QColor weave;        ///< Threads of the cloth; transparent where contrast is high.
    QColor stitch;       ///< Running stitch on the cloth.
    QColor lining;       ///< Inside of the tray.
    QColor well;         ///< Ground of a well in the box tray.
    QColor wellText;     ///< Text in a well.
    QColor wellEdge;     ///< Quiet edge of a well.
    QColor accent;       ///< Words of a stitched link, minute strokes, step marks.
    QColor chosen;       ///< Fill of a chosen chip.
    QColor chosenText;   ///< Text on that fill.
};

/// The palette of one scheme and place.
/// Source of the values: the project's own look page (reference/look/look.md, section 1).
Palette paletteFor(ThemeChoices::Scheme scheme, ThemeChoices::Place place);

} // namespace lidlark::design
