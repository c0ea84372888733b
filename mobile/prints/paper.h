#pragma once

#include <QList>
#include <QSize>
#include <QString>

namespace lidlark::mobile {

/// The sheets that lie in printers.
enum class Paper { A4, Letter, A5, A6 };

/// Upright, tenths of a millimetre. Source: ISO 216:2007, table 1 (A4 210 x 297 mm, A5 148 x 210,
/// A6 105 x 148); ANSI/ASME Y14.1, size A: 8.5 x 11 inches, of 25.4 mm each.
constexpr QSize sizeOf(Paper paper)
{
    switch (paper) {
    case Paper::A4:
        return {2100, 2970};
    case Paper::Letter:
        return {2159, 2794};
    case Paper::A5:
        return {1480, 2100};
    case Paper::A6:
        break;
    }
    return {1050, 1480};
}

/// What it is called; the same in every language.
QString nameOf(Paper paper);

} // namespace lidlark::mobile
