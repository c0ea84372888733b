#pragma once

#include <QImage>

namespace lidlark::pictures {

/// A reference is kept with 32 levels a channel, so that it stays small: up to 4 of 255 off.
[[nodiscard]] QImage rounded(const QImage &picture);

/// How unlike two pictures of a screen are.
struct Likeness {
    int differing = 0; ///< Dots of which a channel differs by more than `leastStep`.
    bool sameSize = true;
    [[nodiscard]] bool isAlike() const;

    /// A dot: of 255. Above the rounding of a reference (4) and the last bit or two of blended
    /// edges that another compiler rounds the other way; below the smallest step between two
    /// neighbouring colours of the theme (sheet and card of the light look: 10, 13 and 19).
    static constexpr int leastStep = 12;
    /// A picture: at most so many dots may differ. Blended edges that differ lie alone, a handful a
    /// page; one letter of the smallest text has about 25 dots of ink, so that another word, or a
    /// frame that has moved by a pixel, has many more.
    static constexpr int mostDots = 20;
};

[[nodiscard]] Likeness compare(const QImage &reference, const QImage &now);

/// Reference, now, and what differs in black, beside each other.
[[nodiscard]] QImage sideBySide(const QImage &reference, const QImage &now);

} // namespace lidlark::pictures
