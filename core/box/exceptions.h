#pragma once

#include "core/base/enum_names.h"

#include <array>

namespace lidlark::box {

/// What can have become of a piece that did not come home (activities.md 2.4). `Lost` may lie on a
/// floor where a toddler crawls; the others cannot.
enum class ExceptionKind { UsedUp, Lost, Broken, DriedOut, StillInUse };
inline constexpr std::size_t exceptionKindCount = 5;
inline constexpr EnumNames<ExceptionKind, exceptionKindCount> exceptionKindNames{
    {"used-up", "lost", "broken", "dried-out", "still-in-use"}};

/// Pieces by kind of exception; all zero: everything came home.
struct Exceptions {
    std::array<int, exceptionKindCount> counts{};

    [[nodiscard]] int of(ExceptionKind kind) const
    {
        return counts[static_cast<std::size_t>(kind)];
    }
    void set(ExceptionKind kind, int count) { counts[static_cast<std::size_t>(kind)] = count; }
    /// Pieces that are not in the box because of this.
    [[nodiscard]] int total() const
    {
        int sum = 0;
        for (const int count : counts)
            sum += count;
        return sum;
    }
    [[nodiscard]] bool allHome() const { return total() == 0; }
    bool operator==(const Exceptions &) const = default;
};

/// The most pieces one statement may name; more is a slip of the finger.
inline constexpr int mostPieces = 999;

} // namespace lidlark::box
