#pragma once

#include <QString>

#include "core/usecase/family.h"

#include <set>

namespace lidlark::mobile {

/// What has to leave a home, in words for its home sheet and its box (core/usecase/take_out.h).
struct TakeOutWords {
    std::set<ItemId> items;
    QString lead; ///< "Out of the house, then wash hands: ..."; empty: nothing has to go.
    QString text; ///< What could stand in, and when it is an emergency.
};

TakeOutWords takeOutWords(const usecase::Family &family, const catalogue::Catalogue &catalogue);

} // namespace lidlark::mobile
