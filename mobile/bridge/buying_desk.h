#pragma once

#include <QString>
#include <QStringList>

#include "core/usecase/book_build.h"
#include "core/usecase/build_sheet.h"
#include "core/usecase/fill_box.h"
#include "core/usecase/keep_build.h"
#include "core/usecase/keep_design.h"
#include "core/usecase/keep_supply.h"
#include "core/usecase/pack_box.h"
#include "core/workbench/item_use.h"

#include "mobile/bridge/clinic_desk.h"

#include <functional>
#include <vector>

namespace lidlark::mobile {

/// What the pages on which boxes are designed and bought for share.

/// How an item is called where it is bought: blades for one hand as their supply is kept, all else
/// as in the catalogue, else as the supply.
using BoughtNames = std::function<std::string(const ItemId &)>;
BoughtNames boughtNames(Household &household);
/// The same with a capital, for a heading of its own.
QString boughtName(const BoughtNames &names, const ItemId &item);

/// What can lie in a box: the catalogue's box items, then what is kept as a supply beside them.
std::vector<ItemId> thingsForBoxes(Household &household);

/// "£220.34", its digits as the language writes them.
QString moneyWords(std::int64_t pence, const std::string &currency);
/// "4 January".
QString dateOf(Day day);

/// How a box departs from its design, a sentence each, as it is bought.
QStringList differencesOf(const workbench::KeptBox &box, const workbench::Design &design,
                          const BoughtNames &names);
/// What whoever reads a box must know of it, with the reasons: a sentence each.
QStringList callOutsOf(const workbench::KeptBox &box, const workbench::Design *design,
                       const BoughtNames &names);

/// Aliases of the children who have a box in this store.
QStringList childrenOn(Household &household);

/// The kinds of box, by id; none where they cannot be read.
workbench::Designs designsOn(Household &household);

/// What more boxes would ask of the till, a line each: first what they cost, then which packs
/// change; or what is to be put right before anybody can say.
QStringList moreBoxesWords(Household &household, const workbench::KeptBuild &build,
                           const std::vector<workbench::KeptBox> &boxes);

} // namespace lidlark::mobile
