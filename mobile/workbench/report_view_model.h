#pragma once

#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"

namespace lidlark::mobile {

/// What a grant report may say of what the boxes cost (job.md T20): of shared plays alone, and of
/// many boxes together.
class ReportViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household READ household WRITE setHousehold REQUIRED)
    /// "£0.17"; empty: too few boxes to tell.
    Q_PROPERTY(QString perUse READ perUse NOTIFY loaded FINAL)
    Q_PROPERTY(int boxes READ boxes NOTIFY loaded FINAL)
    Q_PROPERTY(int leftOut READ leftOut NOTIFY loaded FINAL)
    Q_PROPERTY(QString time READ time NOTIFY loaded FINAL) ///< From which day to which.
    Q_PROPERTY(QString problem READ problem NOTIFY loaded FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] Household *household() const { return m_household; }
    void setHousehold(Household *household);
    [[nodiscard]] QString perUse() const { return m_perUse; }
    [[nodiscard]] int boxes() const { return m_boxes; }
    [[nodiscard]] int leftOut() const { return m_leftOut; }
    [[nodiscard]] QString time() const { return m_time; }
    [[nodiscard]] QString problem() const { return m_problem; }

signals:
    void loaded();

private:
    void load();

    Household *m_household = nullptr;
    QString m_perUse;
    int m_boxes = 0;
    int m_leftOut = 0;
    QString m_time;
    QString m_problem;
};

} // namespace lidlark::mobile
