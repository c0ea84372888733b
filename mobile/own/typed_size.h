#pragma once

#include <QString>
#include <QStringList>

#include "core/measure/solid.h"

#include <array>
#include <optional>

namespace lidlark::mobile {

/// Sizes of one solid while somebody types them.

/// A shape as it is asked for.
enum class TypedShape { Ball, Disc, Rod, Block, Egg, Soft };

struct TypedSolid {
    int shape = -1; ///< A TypedShape; -1: not chosen.
    QStringList mm{{}, {}, {}};
    QString part;     ///< Of what comes off: its name.
    bool cup = false; ///< It is a suction cup or the tip of a dart.

    bool operator==(const TypedSolid &) const = default;
};

/// "Across, mm", "Thick, mm": what is asked of it, in order; soft: nothing.
QStringList sizeLabels(int shape);

/// As it was measured before.
TypedSolid typedFrom(const measure::Solid &solid);
/// A size that is none, named at its place; empty: it may be one, or is still to come.
QString sizeProblem(const TypedSolid &solid, int place);
/// Nothing: a size is missing or is none.
std::optional<measure::Solid> solidOf(const TypedSolid &solid);

} // namespace lidlark::mobile
