#pragma once

#include "core/base/result.h"
#include "core/usecase/build_sheet_page.h"
#include "core/usecase/label_page.h"
#include "core/usecase/lid_list_page.h"
#include "core/usecase/pack_list_page.h"
#include "core/usecase/restock_page.h"
#include "core/usecase/summary_page.h"
#include "core/usecase/tally_page.h"
#include "core/usecase/travel_page.h"
#include "mobile/bridge/household.h"

#include <optional>
#include <string>
#include <vector>

namespace lidlark::mobile {

/// What stands on the prints of the child on the table, as the store has it now.
Result<usecase::LidListPage> lidListPage(Household &household);
Result<usecase::LabelPage> labelPage(Household &household);
/// A label for every box of the store, by alias.
Result<std::vector<usecase::LabelPage>> labelPages(Household &household);
/// @param language in which its entries are named (known_languages.h).
Result<usecase::TravelPage> travelPage(Household &household, const QString &language);
Result<usecase::TallyPage> tallyPage(Household &household, int weeksOn);
Result<usecase::RestockPage> restockPage(Household &household);
/// Of a build of the clinic. @param build its id; empty: the newest that is still to be packed.
Result<usecase::BuildSheetPage> buildSheetPage(Household &household, const QString &build);
Result<usecase::PackListPage> packListPage(Household &household, const QString &build);

/// What tells the file of one build from that of another: its day, and the code of its first box.
QString buildFileWords(Household &household, const QString &build);

/// An adult's yes to sharing (core/sync/consent.h), as it stands: who, and on which day.
struct YesToShare {
    std::string person;
    Day day;
};
std::optional<YesToShare> yesToShare(Household &household);

/// On a therapist's phone: the progress summary with what that child's homes share of their plays.
Result<usecase::SummaryPage> toldByFamily(Household &household, usecase::Family family);

/// The progress summary, and by whose yes what was played is on it.
struct Summary {
    usecase::SummaryPage page;
    std::optional<YesToShare> yes; ///< Only where plays are told.
};
/// Without a standing yes nothing of what was played is told, whatever is wished; on a therapist's
/// phone what families share is.
Result<Summary> summaryPage(Household &household, bool tellPlays);

} // namespace lidlark::mobile
