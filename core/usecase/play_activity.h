#pragma once

#include "core/box/exceptions.h"
#include "core/checkin/kite.h"
#include "core/play/play_events.h"
#include "core/usecase/workplace.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace lidlark::usecase {

struct PlayRequest {
    std::string child; ///< Alias.
    ActivityId activity;
    std::string author;                ///< Empty: the phone's own person.
    std::optional<checkin::Kite> kite; ///< Writes a check-in of its own, in its own lane.
};

/// Begins a play. Errors: NotFound (child, activity).
Result<PlayId> startPlay(Workplace &workplace, const PlayRequest &request);

/// "One eye lost": what came of one item. @p count 0 takes it back.
struct NamedException {
    ItemId item;
    box::ExceptionKind kind = box::ExceptionKind::UsedUp;
    int count = 1;
};

/// Writes what came of the named items of a play, one register each; what was said of such an item
/// before is replaced as a whole. The play goes on. All or nothing.
/// Errors: NotFound (play, item not in this box), Invalid (count below zero, or more than the box
/// can have held).
Outcome nameExceptions(Workplace &workplace, const PlayId &play, const std::string &author,
                       const std::vector<NamedException> &exceptions);

/// Pieces that were counted home, by item.
using CountedHome = std::map<ItemId, int>;

/// Ends the play: named items as given, every other box item of the activity home unless somebody
/// has named it. In one transaction: nobody ever sees half of it.
/// @param counted beyond what was tapped home on this phone.
/// Errors: as nameExceptions; Invalid when small parts are still to be counted home
/// (closing_count.h).
Outcome putBack(Workplace &workplace, const PlayId &play, const std::string &author,
                const std::vector<NamedException> &exceptions, const CountedHome &counted = {});

/// "We stopped early": an ending like any other. Box items count as home unless named. Errors: as
/// putBack.
Outcome stopPlay(Workplace &workplace, const PlayId &play, const std::string &author,
                 const std::vector<NamedException> &exceptions, const CountedHome &counted = {});

/// "What did you notice?"
Outcome noticePhrase(Workplace &workplace, const PlayId &play, play::Phrase phrase);

} // namespace lidlark::usecase
