#pragma once

#include <QString>

#include <optional>

namespace lidlark::mobile {

/// Numbers as somebody types them.

/// Digits of the reader's own language, and its decimal mark, as core reads them.
QString plainDigits(const QString &typed);
/// A whole number as it was typed, whatever digits; -1 where it is none or above @p most.
int wholeFrom(const QString &typed, int most);
/// With a dot, a comma or the language's own decimal mark; nothing where it is no such number from
/// @p least to @p most.
std::optional<double> amountFrom(const QString &typed, double least, double most);
/// As it is typed: "28", "31.8".
QString typedAmount(double amount);

} // namespace lidlark::mobile
