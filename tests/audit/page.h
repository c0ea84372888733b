#pragma once

#include <QQuickItem>
#include <QQuickWindow>

#include <vector>

namespace lidlark::audit {

/// Anything on a page that is read, pressed or looked at.
struct Part {
    QQuickItem *item = nullptr;
    QString type;                   ///< "FilterChip": the QML type it was made from.
    QString name;                   ///< Its words, or what it is called.
    QRectF where;                   ///< What it paints, or where it can be touched; on the window.
    QQuickItem *scroller = nullptr; ///< The nearest thing that scrolls it; null: it stays.
};

/// The page as it stands in a window: all that is to be seen, or could be scrolled to. Where
/// something lies over the whole of it, only that.
class Page
{
public:
    explicit Page(QQuickWindow *window);

    [[nodiscard]] QQuickWindow *window() const { return m_window; }
    [[nodiscard]] const std::vector<Part> &words() const { return m_words; }
    [[nodiscard]] const std::vector<Part> &controls() const { return m_controls; }
    [[nodiscard]] const std::vector<Part> &pictures() const { return m_pictures; }
    [[nodiscard]] const std::vector<QQuickItem *> &scrollers() const { return m_scrollers; }
    /// Something lies over a part of it, to be put away first.
    [[nodiscard]] bool isPartlyCovered() const { return !m_covers.empty(); }
    /// Areas that take a touch and are no control.
    [[nodiscard]] const std::vector<Part> &touched() const { return m_touched; }

private:
    void read(QQuickItem *item, QQuickItem *scroller);
    void sort(QQuickItem *item, QQuickItem *scroller);
    [[nodiscard]] bool isCovered(const Part &part) const;
    void keep(std::vector<Part> &parts, const Part &part) const;

    QQuickWindow *m_window;
    std::vector<QQuickItem *> m_covers;
    std::vector<Part> m_words;
    std::vector<Part> m_controls;
    std::vector<Part> m_pictures;
    std::vector<Part> m_touched;
    std::vector<QQuickItem *> m_scrollers;
};

/// Whether an item was made from a QML type, or from one that was made from it.
[[nodiscard]] bool isA(const QQuickItem *item, const QString &type);
/// Whether @p item is @p above, or lies in it.
[[nodiscard]] bool liesIn(const QQuickItem *item, const QQuickItem *above);
/// Where a part can be seen just now: cut by all that scrolls or clips it.
[[nodiscard]] QRectF inView(const Part &part, const QQuickWindow *window);
/// An item that nobody can use just now, and that says nothing about why.
[[nodiscard]] bool isInactive(const QQuickItem *item);

} // namespace lidlark::audit
