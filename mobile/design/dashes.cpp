#include "dashes.h"

#include <algorithm>
#include <cmath>

namespace lidlark::design {
namespace {

// Shorter than this Qt draws no dash at all, not even its round ends.
constexpr qreal shortestDash = 0.01;

} // namespace

Dashes fittedOpen(Dashes wish, qreal length)
{
    const qreal gaps = std::round((length - wish.on) / (wish.on + wish.off));
    if (gaps < 1.0)
        return wish;
    return {wish.on, std::max(0.0, (length - wish.on * (gaps + 1.0)) / gaps)};
}

Dashes fittedClosed(Dashes wish, qreal length)
{
    const qreal count = std::max(1.0, std::round(length / (wish.on + wish.off)));
    return {wish.on, std::max(0.0, length / count - wish.on)};
}

QPen dashPen(const QColor &colour, qreal thickness, Dashes dashes)
{
    // Qt counts dashes in pen widths and adds the round ends outside of them.
    const qreal on = std::max(shortestDash, dashes.on - thickness);
    const qreal off = dashes.off + dashes.on - on;
    QPen pen(colour, thickness, Qt::CustomDashLine, Qt::RoundCap, Qt::RoundJoin);
    pen.setDashPattern({on / thickness, off / thickness});
    return pen;
}

} // namespace lidlark::design
