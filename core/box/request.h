#pragma once

#include "core/box/request_events.h"
#include "core/journal/seen.h"

#include <span>
#include <string>
#include <vector>

namespace lidlark::box {

/// One item asked for once: from the asking to the counting in (events.md 5, request). Its key is
/// the item and the round: how many rounds were closed when it was asked for.
struct Request {
    int round = 0;
    RequestStep step = RequestStep::Asked;
    ItemId insteadOf;    ///< What it stands in for; empty: itself.
    std::string askedBy; ///< Empty: it came without anybody asking.
    DayPart asked;
    std::string stepBy;
    DayPart stepWhen;
    bool operator==(const Request &) const = default;

    [[nodiscard]] bool isOpen() const { return step != RequestStep::CountedIn; }
};

/// Every round of one item, in order. A status only rises; said twice, or by two, is once.
std::vector<Request> foldRequests(std::span<const journal::Event> events);

/// Somebody has asked for the item, and it has not come yet.
bool anyOpen(const std::vector<Request> &requests);

/// The round that a new request or counting-in belongs to: the first that nobody has closed.
int roundInHand(const std::vector<Request> &requests);

} // namespace lidlark::box
