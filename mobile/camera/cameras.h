#pragma once

#include <QCameraDevice>
#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace lidlark::mobile {

/// The cameras this phone had when this was made; none where nothing is shown on a screen. None is
/// opened.
class Cameras : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool any READ any CONSTANT FINAL)
    /// One that looks away from whoever holds the phone, where there is one.
    Q_PROPERTY(QCameraDevice best READ best CONSTANT FINAL)

public:
    explicit Cameras(QObject *parent = nullptr);

    [[nodiscard]] bool any() const { return !m_best.isNull(); }
    [[nodiscard]] QCameraDevice best() const { return m_best; }

private:
    QCameraDevice m_best;
};

} // namespace lidlark::mobile
