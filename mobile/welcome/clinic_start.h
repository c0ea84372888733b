#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"

namespace lidlark::mobile {

/// The first run of somebody who packs boxes for children.
class ClinicStart : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household MEMBER m_household REQUIRED)
    Q_PROPERTY(QString problem READ problem NOTIFY problemChanged FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] QString problem() const { return m_problem; }
    /// @returns whether the workbench stands; else `problem` says why not.
    Q_INVOKABLE bool begin(const QString &person);

signals:
    void problemChanged();

private:
    Household *m_household = nullptr;
    QString m_problem;
};

} // namespace lidlark::mobile
