#include "mobile/platform/metered.h"

#include <QNetworkInformation>

namespace lidlark::mobile {

bool networkIsMetered()
{
    if (!QNetworkInformation::loadBackendByFeatures(QNetworkInformation::Feature::Metered))
        return false;
    const QNetworkInformation *network = QNetworkInformation::instance();
    return network != nullptr && network->isMetered();
}

} // namespace lidlark::mobile
