#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/crew_life.h"

namespace lidlark::mobile {

/// What a crew shares as one sealed file, where there is no network: written among the phone's
/// documents, or taken in from one that somebody has handed over.
class HandedFile : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::CrewLife *crew MEMBER m_crew REQUIRED)
    /// Empty: the documents of whoever uses the phone.
    Q_PROPERTY(QString folder MEMBER m_folder FINAL)
    /// Where the file lies, or why there is none.
    Q_PROPERTY(QString written READ written NOTIFY changed FINAL)
    /// What was taken in, or why nothing was.
    Q_PROPERTY(QString taken READ taken NOTIFY changed FINAL)
    Q_PROPERTY(bool busy READ busy NOTIFY changed FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] QString written() const { return m_written; }
    [[nodiscard]] QString taken() const { return m_taken; }
    [[nodiscard]] bool busy() const { return m_busy; }

    Q_INVOKABLE void write();
    Q_INVOKABLE void takeIn(const QString &file);

signals:
    void changed();

private:
    CrewLife *m_crew = nullptr;
    QString m_folder;
    QString m_written;
    QString m_taken;
    bool m_busy = false;
};

} // namespace lidlark::mobile
