#pragma once

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace lidlark::mobile {

/// The adult's card, step by step: a head and a line each.
class TogetherCards : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QStringList heads READ heads CONSTANT FINAL)
    Q_PROPERTY(QStringList lines READ lines CONSTANT FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] QStringList heads() const;
    [[nodiscard]] QStringList lines() const;
};

} // namespace lidlark::mobile
