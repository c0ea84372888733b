#include "mobile/bridge/whole_places.h"

#include <QRegularExpression>

namespace lidlark::mobile {

QString withWholePlaces(const QString &words)
{
    // Unicode UAX #9: first strong isolate, its end, and the mark that a line runs from the right.
    // What is isolated does not decide where its line begins.
    static const QRegularExpression place(QStringLiteral("(%(?:n|L?[1-9]))"));
    QString whole = words;
    whole.replace(place, QStringLiteral("\u2068\\1\u2069"));
    return whole.startsWith(QChar(0x2068)) ? QChar(0x200F) + whole : whole;
}

} // namespace lidlark::mobile
