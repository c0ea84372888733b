#include "mobile/bridge/small_drawing.h"

#include "mobile/bridge/text.h"

namespace lidlark::mobile {

QString smallDrawingOf(const catalogue::Activity &activity, const catalogue::Catalogue &catalogue)
{
    const catalogue::ItemKind *first =
        activity.items.empty() ? nullptr : catalogue.item(activity.items.front().item);
    return fromCore(first != nullptr ? first->drawing : activity.picture.drawing);
}

} // namespace lidlark::mobile
