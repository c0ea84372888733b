#pragma once

#include "mobile/app/graph.h"
#include "tests/states/trail.h"
#include "tests/tour/hand.h"

#include <functional>

namespace lidlark::test {

/// A screen in a state worth seeing.
struct Stop {
    QString name; ///< "play-first-step"
    QQuickWindow *window = nullptr;
    mobile::Graph *graph = nullptr;
};

/// Goes from state to state of one started app. Once something could not be found, the rest of the
/// walk is left out.
class Walk
{
public:
    using Seen = std::function<void(const Stop &)>;

    Walk(mobile::Graph &graph, QQuickWindow *window, Trail &trail, Seen seen)
        : m_graph(graph), m_window(window), m_trail(trail), m_seen(std::move(seen))
    {
    }

    /// Taps the first control whose accessible name begins with @p name, or, with a leading #,
    /// whose objectName does.
    void tap(const char *name);
    /// What comes by itself, a little later.
    void waitFor(const char *name);
    /// Presses it for as long as a held control asks for.
    void hold(const char *name);
    /// Types into the field whose accessible name begins with @p field.
    void write(const char *field, const char *text);
    /// Sets a property of the screen that is shown: what time alone would do.
    void set(const char *property, const QVariant &value);
    /// A state worth seeing.
    void see(const char *state);

    [[nodiscard]] mobile::Graph &graph() { return m_graph; }
    /// What could not be found, and where; empty: walked to the end.
    [[nodiscard]] QString failed() const { return m_failed; }

private:
    QQuickItem *find(const char *name);
    [[nodiscard]] QQuickItem *findByName(const QString &name) const;
    [[nodiscard]] bool press(QQuickItem *item, int ms);

    mobile::Graph &m_graph;
    QQuickWindow *m_window;
    Trail &m_trail;
    Seen m_seen;
    QString m_last;
    QString m_failed;
};

} // namespace lidlark::test
