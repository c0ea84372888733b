#pragma once

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/numerals.h"

namespace lidlark::mobile {

/// `numerals` for a screen: `Numerals.of(step + 1)`.
class NumeralsOnScreen : public QObject
{
    Q_OBJECT
    QML_NAMED_ELEMENT(Numerals)
    QML_SINGLETON

public:
    using QObject::QObject;

    [[nodiscard]] Q_INVOKABLE static QString of(int number) { return numerals(number); }
};

} // namespace lidlark::mobile
