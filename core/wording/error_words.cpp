#include "core/wording/error_words.h"

#include "core/base/day.h"
#include "core/wording/day_words.h"
#include "core/wording/detail_words.h"

namespace lidlark::wording {

namespace {

/// What the error speaks of.
Argument detailOr(const Error &error, English unsaid, const catalogue::Catalogue *names = nullptr)
{
    return error.detail.empty() ? Argument(Sentence{unsaid, {}}) : detailWords(error.detail, names);
}

/// @p withDay has the date in the place of %1 and its year in that of %2.
Sentence ofDay(const Error &error, English withDay, English withText, English unsaid)
{
    const auto day = dayFromText(error.detail);
    if (!day)
        return {withText, {detailOr(error, unsaid)}};
    return {withDay, {dateWords(*day), inDigits(civilFrom(*day).year)}};
}

} // namespace

Sentence sentenceFor(const Error &error, const catalogue::Catalogue *names)
{
    switch (error.code) {
    case ErrorCode::NotFound:
        return {say("Lidlark cannot find %1. Nothing was changed. Check the name, then try again."),
                {detailOr(error, say("what was asked for"), names)}};
    case ErrorCode::Invalid:
        return {say("That does not fit: %1. Nothing was changed. Put it right, then try again."),
                {detailOr(error, say("what was typed"), names)}};
    case ErrorCode::Unreadable:
        return {say("This file is damaged or is not a Lidlark store: %1. It was left as it is. Use "
                    "another file, or ask for a copy from another phone of your crew."),
                {detailOr(error, say("no name"))}};
    case ErrorCode::Unwritable:
        return {say("The phone could not save: the storage is full, or may not be written. Nothing "
                    "that was kept before is lost. Make some room, then try again."),
                {}};
    case ErrorCode::NewerSchema:
        return {
            say("A newer Lidlark wrote this store. It was left as it is. Bring Lidlark up to date "
                "on this phone, then open it again."),
            {}};
    case ErrorCode::Busy:
        return {say("Another program is using this store. Close it, then try again. Nothing was "
                    "changed."),
                {}};
    case ErrorCode::ClockUnset:
        return ofDay(error,
                     say("This phone's clock shows %1 %2. Set the date, then open Lidlark again. "
                         "Nothing was changed."),
                     say("This phone's clock shows %1. Set the date, then open Lidlark again. "
                         "Nothing was changed."),
                     say("no date"));
    case ErrorCode::BeforeBirth:
        return ofDay(error,
                     say("On %1 %2 your child was not born yet. Nothing was changed. Check the "
                         "phone's date and the birth month."),
                     say("On %1 your child was not born yet. Nothing was changed. Check the "
                         "phone's date and the birth month."),
                     say("that day"));
    case ErrorCode::NotAllowed:
        if (error.detail == "member")
            return {say("Only a phone of a parent or the therapist, and one that is in the crew, "
                        "can do that. Nothing was changed."),
                    {}};
        if (error.detail == "workbench")
            return {say("Only the therapist's phone does that. Nothing was changed."), {}};
        if (error.detail == "hand-over")
            return {say("This phone packs, and does not know this child. Hand the box over on the "
                        "therapist's phone. Nothing was changed."),
                    {}};
        return {
            say("That is for the family to say. Nothing was changed. Tell them, and they note it."),
            {}};
    case ErrorCode::AccessEnded:
        return ofDay(error,
                     say("Your time with this box ended on %1 %2. What you noted stays with the "
                         "family. They can ask you again."),
                     say("Your time with this box ended on %1. What you noted stays with the "
                         "family. They can ask you again."),
                     say("an earlier day"));
    case ErrorCode::AlreadyAnswered:
        break;
    }
    return {say("%1 answered that question before. Nothing was lost, and that answer stands."),
            {detailOr(error, say("Somebody"))}};
}

} // namespace lidlark::wording
