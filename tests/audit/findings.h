#pragma once

#include <QStringList>

namespace lidlark::audit {

/// How much of what is painted may lie beyond an edge: half a letter's overhang, no more. px.
inline constexpr double allowance = 4;

/// A number as a message shows it.
inline QString shown(double number)
{
    return QString::number(number, 'f', 1);
}

/// The beginning of some words, for a message.
inline QString quoted(const QString &words)
{
    return QStringLiteral("\"%1\"").arg(words.left(60).simplified());
}

} // namespace lidlark::audit
