#pragma once

#include <QImage>

namespace lidlark::pictures {

/// What is kept of a picture as its reference, so that some five hundred stay under 5 MB: half the
/// size, each dot the mean of four, in at most 256 colours of 32 levels a channel (16 where those
/// are too many), which is up to 8 of 255 off.
[[nodiscard]] QImage kept(const QImage &picture);

/// How unlike two pictures of a screen are.
struct Likeness {
    int differing = 0; ///< Dots of the reference of which a channel differs by more than leastStep.
    bool sameSize = true;
    [[nodiscard]] bool isAlike() const;

    /// Of 255. Above what a reference may be off (8) and the last bits of blended edges, which
    /// another build rounds otherwise; below the smallest step between two grounds of the theme
    /// that lie side by side (sheet and card of the light look: 10, 13 and 19).
    static constexpr int leastStep = 12;
    /// So many dots may differ on a whole page. Blended edges that differ lie alone; one letter of
    /// the smallest text covers some twenty dots of the half size, and the edges of a control that
    /// has moved a hundred or more.
    static constexpr int mostDots = 6;
};

/// @param reference as kept(); @p now as it was grabbed.
[[nodiscard]] Likeness compare(const QImage &reference, const QImage &now);

/// Reference, now, and what differs in black, beside each other.
[[nodiscard]] QImage sideBySide(const QImage &reference, const QImage &now);

} // namespace lidlark::pictures
