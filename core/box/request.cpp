#include "core/box/request.h"

#include "core/box/item_changes.h"

#include <algorithm>
#include <map>

namespace lidlark::box {

namespace {

using journal::Event;

void raise(Request &request, RequestStep step, const Event &event)
{
    const bool unsaid = request.stepBy.empty();
    if (!unsaid && step <= request.step)
        return;
    request.step = step;
    request.stepBy = event.author;
    request.stepWhen = event.when;
}

} // namespace

std::vector<Request> foldRequests(std::span<const Event> events)
{
    std::vector<const Event *> ordered;
    ordered.reserve(events.size());
    for (const Event &event : events)
        ordered.push_back(&event);
    std::sort(ordered.begin(), ordered.end(),
              [](const Event *a, const Event *b) { return writtenEarlier(*a, *b); });
    std::map<int, Request> rounds;
    for (const Event *event : ordered) {
        if (const auto said = readRequest(*event)) {
            Request &request = rounds[said->round];
            if (said->step == RequestStep::Asked && request.askedBy.empty()) {
                request.askedBy = event->author;
                request.asked = event->when;
                request.insteadOf = said->insteadOf;
            }
            raise(request, said->step, *event);
        } else if (const auto counted = readCountedIn(*event)) {
            raise(rounds[counted->round], RequestStep::CountedIn, *event);
        }
    }
    std::vector<Request> requests;
    for (auto &[round, request] : rounds) {
        request.round = round;
        requests.push_back(request);
    }
    return requests;
}

bool anyOpen(const std::vector<Request> &requests)
{
    return !requests.empty() && requests.back().isOpen();
}

int roundInHand(const std::vector<Request> &requests)
{
    int round = 0;
    for (const Request &request : requests) {
        if (!request.isOpen())
            round = std::max(round, request.round + 1);
    }
    return round;
}

} // namespace lidlark::box
