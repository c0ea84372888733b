#pragma once

#include <QStringList>

#include "core/base/enum_names.h"
#include "core/base/result.h"
#include "mobile/bridge/household.h"
#include "mobile/bridge/label_region.h"
#include "mobile/prints/paper.h"
#include "mobile/prints/print_page.h"

namespace lidlark::mobile {

/// All that can be printed.
enum class Print {
    LidList,
    Tally,
    Travel,
    KiteCard,
    Summary,
    Label,
    Labels,
    Restock,
    PackList,
    BuildSheet
};
inline constexpr EnumNames<Print, 10> printNames{{"lid-list", "tally", "travel", "kite-card",
                                                  "summary", "label", "labels", "restock",
                                                  "pack-list", "build-sheet"}};

/// What is wanted of one print.
struct PrintWish {
    Print what = Print::LidList;
    Paper paper = Paper::A4;
    QStringList languages; ///< The page's own first; a second where there is room for two.
    bool tellPlays = false;
    int weeksOn = 0;     ///< Of the tally: 0 this week, 1 the next.
    QString build = {};  ///< Of the clinic; empty: the newest that is still to be packed.
    bool byItem = false; ///< The pack list: item by item in place of box by box.
    wording::Region labels = labelRegionHere();
};

/// On which sheets it can be printed, the first of them for a start.
QList<Paper> papersFor(Print what);
/// How many languages it can stand in at once; none: it is in the app's.
int mostLanguages(Print what);
/// A therapist's alone.
bool isForTherapist(Print what);
/// About a build of the clinic, and no child's.
bool isOfBuild(Print what);
/// A guest's too: it tells no history.
bool isForGuest(Print what);

/// The pages, as the store has it now. Errors: those of print_pages.h.
Result<PrintPages> pagesOf(Household &household, const PrintWish &wish);

} // namespace lidlark::mobile
