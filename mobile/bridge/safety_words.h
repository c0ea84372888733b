#pragma once

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

namespace lidlark::mobile {

/// Words of a screen that guard somebody, as `safetyText` says those of the core:
/// `SafetyWords.of(QT_TRANSLATE_NOOP("SafetyWords", "Pick up every piece now."))`.
class SafetyWords : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON

public:
    using QObject::QObject;

    /// The translation and, while nobody has reviewed it, the English on a line under it.
    [[nodiscard]] Q_INVOKABLE static QString of(const QString &english);
    /// The same with a name in the place of %1.
    [[nodiscard]] Q_INVOKABLE static QString about(const QString &english, const QString &name);
};

} // namespace lidlark::mobile
