#pragma once

#include <QImage>
#include <QObject>
#include <QThreadPool>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/seen_squares.h"

namespace lidlark::mobile {

/// Looks for a joining code in what a camera shows: one picture at a time, on a thread of its own,
/// a few a second. It keeps none of them.
class SquareReader : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool reading READ reading WRITE setReading NOTIFY readingChanged FINAL)
    /// The next picture is looked at; while false, `look` lets one go by.
    Q_PROPERTY(bool ready READ ready NOTIFY readyChanged FINAL)
    /// Squares were seen since the reading began, and they are no joining code.
    Q_PROPERTY(bool foreign READ foreign NOTIFY foreignChanged FINAL)

public:
    explicit SquareReader(QObject *parent = nullptr);
    ~SquareReader() override;

    [[nodiscard]] bool reading() const { return m_reading; }
    /// Once it is set to false nothing is read any more, not even what is being looked at just now.
    void setReading(bool reading);
    [[nodiscard]] bool ready() const { return m_reading && !m_looking && !m_rest.isActive(); }
    [[nodiscard]] bool foreign() const { return m_foreign; }

    Q_INVOKABLE void look(const QImage &picture);

signals:
    void readingChanged();
    void readyChanged();
    void foreignChanged();
    /// A joining code (core/sync/invitation.h), and never another text. The reading is over.
    void read(const QString &text);

private:
    void take(int turn, const std::optional<SeenSquares> &seen);
    void setForeign(bool foreign);

    /// From the end of one look to the next: a phone in the hand stays cool.
    static constexpr int restMs = 200;

    QThreadPool m_thread;
    QTimer m_rest;
    int m_turn = 0; ///< One for each time that reading began or ended.
    bool m_reading = false;
    bool m_looking = false;
    bool m_foreign = false;
};

} // namespace lidlark::mobile
