#include "mobile/bridge/whole_places.h"

#include <QRegularExpression>

namespace lidlark::mobile {

QString withWholePlaces(const QString &words)
{
    // Unicode UAX #9: first strong isolate, its end, and the mark that a line runs from the right.
    // What is isolated does not decide where its line begins.
    // A code such as "R%1" is whole without it, and would be cut in two by it.
    static const QRegularExpression place(
        QStringLiteral("(?<![A-Za-z0-9])(%(?:n|L?[1-9]))(?![A-Za-z0-9])"));
    QString whole = words;
    whole.replace(place, QStringLiteral("\u2068\\1\u2069"));
    return whole.startsWith(QChar(0x2068)) ? QChar(0x200F) + whole : whole;
}

} // namespace lidlark::mobile
