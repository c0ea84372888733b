#pragma once

#include <QString>

#include "core/usecase/issue_box.h"
#include "core/usecase/keep_build.h"
#include "core/usecase/pack_box.h"
#include "core/usecase/pack_plain.h"
#include "core/usecase/recall_lot.h"
#include "core/usecase/tend_box.h"
#include "core/wording/pack_words.h"

#include "mobile/bridge/clinic_desk.h"

namespace lidlark::mobile {

/// How an item of a build is called: as in the catalogue, else as its supply is kept, else its id.
wording::ItemNames packingNames(Household &household);

/// The same with a capital, for a heading of its own.
QString packingName(const wording::ItemNames &names, const ItemId &item);

} // namespace lidlark::mobile
