#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "mobile/bridge/play_in_hand.h"

namespace lidlark::mobile {

/// What becomes of a burst balloon: used up when every piece is found, lost when one is not.
class BurstViewModel : public QObject
{
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lidlark::mobile::PlayInHand *playInHand MEMBER m_playInHand REQUIRED)

public:
    using QObject::QObject;

    /// Written at once. @returns false when it could not be kept.
    Q_INVOKABLE bool note(bool allFound);

private:
    PlayInHand *m_playInHand = nullptr;
};

} // namespace lidlark::mobile
