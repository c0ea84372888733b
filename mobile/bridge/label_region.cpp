#include "mobile/bridge/label_region.h"

#include "mobile/bridge/text.h"

#include <QLocale>

namespace lidlark::mobile {

wording::Region labelRegionHere()
{
    return wording::regionOf(toCore(QLocale::territoryToCode(QLocale::system().territory())));
}

} // namespace lidlark::mobile
