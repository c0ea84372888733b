#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/household.h"

#include <vector>

namespace lidlark::mobile {

/// Pieces that may lie on the floor, kind by kind, and the ways to close that (job.md scenario 5;
/// safety.md SP-06).
class FloorViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::Household *household MEMBER m_household REQUIRED)
    /// "Two stick-on eyes are missing. One peg is missing."
    Q_PROPERTY(QString lead READ lead NOTIFY changed FINAL)
    /// "Keep Mirren away until found."
    Q_PROPERTY(QString keepAway READ keepAway NOTIFY changed FINAL)
    /// How many of the first kind are missing.
    Q_PROPERTY(int missing READ missing NOTIFY changed FINAL)
    /// "How many stick-on eyes turned up?"
    Q_PROPERTY(QString question READ question NOTIFY changed FINAL)

public:
    using QObject::QObject;

    [[nodiscard]] QString lead() const;
    [[nodiscard]] QString keepAway() const { return m_keepAway; }
    [[nodiscard]] int missing() const;
    [[nodiscard]] QString question() const;

    Q_INVOKABLE void load();
    /// Some pieces of the first kind turned up. @returns whether nothing is missing any more.
    Q_INVOKABLE bool found(int pieces);
    /// The floor was looked over, and the rest was not found.
    Q_INVOKABLE bool floorChecked();

signals:
    void changed();

private:
    struct Missing {
        ItemId item;
        int pieces = 0;
    };
    [[nodiscard]] QString sentenceFor(const Missing &missing) const;
    [[nodiscard]] QString nameOf(const Missing &missing) const;

    Household *m_household = nullptr;
    QString m_keepAway;
    std::vector<Missing> m_missing;
};

} // namespace lidlark::mobile
