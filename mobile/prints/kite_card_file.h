#pragma once

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

namespace lidlark::mobile {

/// Keeps the kite on paper as a PDF among the phone's documents, and says where it is.
class KiteCardFile : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    /// Empty: the documents of whoever uses the phone.
    Q_PROPERTY(QString folder MEMBER m_folder FINAL)
    /// Where the card is, or why there is none; one sentence or two.
    Q_PROPERTY(QString said READ said NOTIFY saved FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] QString said() const { return m_said; }
    /// Writes the whole file or none, in place of an earlier card.
    /// @returns false when it could not be written; said() tells.
    Q_INVOKABLE bool save();

signals:
    void saved();

private:
    QString m_folder;
    QString m_said;
};

} // namespace lidlark::mobile
