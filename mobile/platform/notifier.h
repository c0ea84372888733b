#pragma once

#include <QObject>
#include <QString>

namespace lidlark::mobile {

/// Shows one quiet line outside the app. Whoever sees the phone reads it, on a locked screen too.
class Notifier : public QObject
{
    Q_OBJECT

public:
    using QObject::QObject;

    /// Shows @p line, without a sound. Answered by `said`.
    virtual void say(const QString &line) = 0;
    /// Asks whether anybody would show it. Answered by `answered`.
    virtual void ask() = 0;

signals:
    /// @param shown somebody has taken the line and shows it.
    void said(bool shown);
    void answered(bool available);
};

} // namespace lidlark::mobile
