#pragma once

#include <QString>

namespace lidlark::mobile {

/// The text with its digits as the language writes them: U+06F0 to U+06F9 in Urdu (Unicode chapter
/// 9.2: the Eastern Arabic-Indic digits of Persian, Sindhi and Urdu). A code such as "R2", where
/// letters touch the digits, stays as it is.
QString numerals(const QString &text);
/// The same in the language @p code, which need not be the app's.
QString numerals(const QString &text, const QString &code);
QString numerals(int number);

} // namespace lidlark::mobile
