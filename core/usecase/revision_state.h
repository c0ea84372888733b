#pragma once

#include "core/usecase/family.h"

#include <optional>
#include <string>
#include <vector>

namespace lidlark::usecase {

/// One thing that a new lid list removes.
struct RemovedThing {
    ItemId item;
    int pieces = 0;    ///< That may still be in the box.
    bool out = false;  ///< Somebody has said, knowing of it, that it is out of the house.
    std::string outBy; ///< Who, and when.
    DayPart outWhen;
};

/// A phone that has got the list.
struct Received {
    std::string person;
    Day day; ///< Of that phone, when it said so.
};

/// How far a changed lid list has come (job.md scenario 7, T9).
struct RevisionState {
    int number = 1;
    Day sent;
    std::string by; ///< Who wrote it; of two lists, the one written later.
    /// Why, in the therapist's words: of each list in force that says so.
    std::vector<std::string> why;
    bool twoLists = false; ///< Written without knowing of each other: the therapist is to confirm.
    std::vector<RemovedThing> takeOut; ///< In the order of the items' ids.
    std::vector<ItemId> onTheWay;      ///< Of the list, added, and not counted in yet.
    std::vector<Received> received;    ///< In the order of the days.

    /// Everything that had to leave is out; received alone is not done.
    [[nodiscard]] bool isConfirmed() const;
};

/// @returns nothing where the box has the list that it was handed over with.
Result<std::optional<RevisionState>> revisionStateOf(Workplace &workplace, const Family &family);

} // namespace lidlark::usecase
