#pragma once

#include <QString>

namespace lidlark::mobile {

/// The text with its first letter as a capital, whatever alphabet it is of.
QString capitalised(const QString &text);
/// The first letter small, likewise.
QString uncapitalised(const QString &text);

/// A name inside a line. In a language that is read from the right it is set apart, so that
/// neither its letters nor what stands beside it change places: first strong isolate to pop
/// directional isolate (Unicode UAX #9, 2.4 and 2.5).
QString isolated(const QString &text);
/// The same in a language other than the app's.
QString isolated(const QString &text, bool rightToLeft);

/// English inside a language that is read from the right: left-to-right isolate.
QString isolatedEnglish(const QString &text);
QString isolatedEnglish(const QString &text, bool rightToLeft);

} // namespace lidlark::mobile
