#pragma once

#include <QSize>

#include <functional>
#include <vector>

class QPainter;

namespace lidlark::mobile {

/// One page, or one card of which several lie on a page.
struct PrintPage {
    QSize size; ///< Tenths of a millimetre.
    /// From its upper left corner, in tenths of a millimetre; holds all that it needs.
    std::function<void(QPainter &)> paint;
};

using PrintPages = std::vector<PrintPage>;

/// Cards on sheets of @p sheet, as many as fit, either way up, with marks where to cut. Cards as
/// large as the sheet are its pages, and so are cards that it cannot hold.
/// @param fill where a sheet holds all of them twice or more often, it does.
PrintPages onSheets(const PrintPages &cards, QSize sheet, bool fill);

} // namespace lidlark::mobile
