#pragma once

#include "tests/audit/page.h"

#include "tests/audit/ink.h"

#include <QHash>
#include <QStringList>

namespace lidlark::audit {

/// What is too faint on one page, computed from its pixels: it is grabbed with its words and
/// without. Where it scrolls, it is looked at again at each place.
/// Source: WCAG 2.2, success criterion 1.4.3 Contrast (Minimum): 4.5 for text, 3 for text of 24 px
/// and more, or 18.66 px and more when bold (18 and 14 pt); inactive controls are exempt.
class WordsLook
{
public:
    explicit WordsLook(QQuickWindow *window) : m_window(window) {}

    /// Looks at the page as it stands.
    void look(const Page &page);
    /// Too faint, or never seen at any place that was looked at.
    /// @param wholePage what lies below the window was scrolled to as well.
    [[nodiscard]] QStringList findings(const Page &page, bool wholePage) const;

private:
    /// What was seen of some words where most of them was in view.
    struct Sight {
        double height = 0;
        Ink ink;
    };

    QQuickWindow *m_window;
    QHash<const QQuickItem *, Sight> m_sights;
};

/// What is too faint of signs and controls: of each picture some part stands out from what lies
/// below, and each control has something besides its words that does.
/// Source: WCAG 2.2, success criterion 1.4.11 Non-text Contrast: 3.
[[nodiscard]] QStringList checkParts(const Page &page);

/// What tells chosen from not chosen by hue alone: each kind of control that can be chosen is
/// turned over, and both are compared with all colour taken away.
/// Source: WCAG 2.2, success criterion 1.4.1 Use of Color; the difference that is asked for is that
/// of 1.4.11 for a state.
[[nodiscard]] QStringList checkChosen(const Page &page);

} // namespace lidlark::audit
