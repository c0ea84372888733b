#pragma once

#include "core/base/enum_names.h"
#include "core/box/exceptions.h"
#include "core/journal/event.h"

#include <optional>
#include <string>

namespace lidlark::box {

/// How far a request has come (job.md G5).
enum class RequestStep { Asked, Seen, Packed, OnItsWay, CountedIn };
inline constexpr EnumNames<RequestStep, 5> requestStepNames{
    {"asked", "seen", "packed", "on-its-way", "counted-in"}};

/// More rounds than this are a slip or a hostile event.
inline constexpr int mostRounds = 10'000;

/// An item was asked for, or the asking went a step on. Never `CountedIn`: that is an event of its
/// own, since it brings pieces.
struct RequestSaid {
    ItemId item;
    int round = 0;
    RequestStep step = RequestStep::Asked;
    ItemId insteadOf; ///< What it stands in for; empty: itself.
};

/// What was sent lies in the box.
struct CountedIn {
    ItemId item;
    int round = 0;
    int pieces = 1;
};

std::string fieldsOf(const RequestSaid &said);
std::string fieldsOf(const CountedIn &counted);
/// Nothing for malformed fields: such an event stays in the set without effect.
std::optional<RequestSaid> readRequest(const journal::Event &event);
std::optional<CountedIn> readCountedIn(const journal::Event &event);

} // namespace lidlark::box
