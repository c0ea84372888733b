#pragma once

#include "core/box/exceptions.h"
#include "core/journal/event.h"

#include <map>
#include <optional>
#include <set>
#include <span>
#include <string>

namespace lidlark::box {

/// What came of one item in one play: the value of the register (play, item) (events.md 5).
struct Outcome {
    PlayId play;
    ItemId item;
    Exceptions exceptions;
    bool weak = false; ///< "Home" said of an unnamed item: fills only an empty place.
};

/// An exception outside a play, or a loss found out later. @p count is above zero; below zero for
/// pieces still in use that are back again.
struct LooseException {
    ItemId item;
    ExceptionKind kind = ExceptionKind::UsedUp;
    int count = 1;
    std::optional<Day> day = {}; ///< On which it happened; none: when it was written.
};

struct Found {
    ItemId item;
    int count = 1;
};

/// A full count of one item: in the box, and knowingly out.
struct Counted {
    ItemId item;
    int inBox = 0;
    int out = 0;
};

/// The lid list at one revision: pieces by item. What an earlier one lists and this one does not is
/// to be taken out (core/box/lid_list.h).
struct Revision {
    int number = 1;
    std::map<ItemId, int> packed;
    std::set<ItemId> removed = {}; ///< For who holds no earlier one: a guest.
};

/// One loss was looked for on the floor and not found.
struct FloorChecked {
    ItemId item;
    std::string loss; ///< Identity of the event that opened the note.
};

/// All pieces of an item that were in the box left the house, said by an adult (events.md 5,
/// confirmation). A later count that has seen it can bring the item back.
struct TakenOut {
    ItemId item;
    std::string why; ///< "latex", "wheat", "revision".
};

/// An answer to a question about an item (core/box/question.h).
struct Answered {
    ItemId item;
    std::string question;
    std::string answer; ///< One of answersOf(question).
};

/// Fields of the event, canonical. Each has a reader that gives nothing for malformed fields, so
/// that such an event stays in the set without effect.
std::string fieldsOf(const Outcome &outcome);
std::string fieldsOf(const LooseException &exception);
std::string fieldsOf(const Found &found);
std::string fieldsOf(const Counted &counted);
std::string fieldsOf(const Revision &revision);
std::string fieldsOf(const FloorChecked &checked);
std::string fieldsOf(const TakenOut &taken);
std::string fieldsOf(const Answered &answered);

std::optional<Outcome> readOutcome(const journal::Event &event);
std::optional<LooseException> readLooseException(const journal::Event &event);
std::optional<Found> readFound(const journal::Event &event);
std::optional<Counted> readCounted(const journal::Event &event);
std::optional<Revision> readRevision(const journal::Event &event);
std::optional<FloorChecked> readFloorChecked(const journal::Event &event);
std::optional<TakenOut> readTakenOut(const journal::Event &event);
std::optional<Answered> readAnswered(const journal::Event &event);

} // namespace lidlark::box
