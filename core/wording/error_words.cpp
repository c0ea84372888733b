#include "core/wording/error_words.h"

#include "core/base/day.h"
#include "core/wording/day_words.h"

namespace lidlark::wording {

namespace {

/// "1 January 1970" for an ISO day; anything else as it is.
std::string longDay(const std::string &text)
{
    const auto day = dayFromText(text);
    return day ? dateWords(*day) + " " + std::to_string(civilFrom(*day).year) : text;
}

} // namespace

Sentence sentenceFor(const Error &error)
{
    switch (error.code) {
    case ErrorCode::NotFound:
        return {"There is no %1. Nothing was changed.", {error.detail}};
    case ErrorCode::Invalid:
        return {"That does not fit: %1. Nothing was changed.", {error.detail}};
    case ErrorCode::Unreadable:
        return {"This file is damaged or is not a Lidlark store: %1. It was left as it is. Use "
                "another file, or ask for a copy from another phone of your crew.",
                {error.detail}};
    case ErrorCode::Unwritable:
        return {"The phone could not save: the storage is full, or may not be written. Nothing "
                "that was kept before is lost. Make some room, then try again.",
                {}};
    case ErrorCode::NewerSchema:
        return {"A newer Lidlark wrote this store. It was left as it is. Bring Lidlark up to date "
                "on this phone, then open it again.",
                {}};
    case ErrorCode::Busy:
        return {"Another program is using this store. Close it, then try again. Nothing was "
                "changed.",
                {}};
    case ErrorCode::ClockUnset:
        return {"This phone's clock shows %1. Set the date, then open Lidlark again. Nothing was "
                "changed.",
                {longDay(error.detail)}};
    case ErrorCode::BeforeBirth:
        return {"On %1 your child was not born yet. Check the phone's date and the birth month.",
                {longDay(error.detail)}};
    case ErrorCode::AlreadyAnswered:
        break;
    }
    return {"That question was answered before, by %1.", {error.detail}};
}

} // namespace lidlark::wording
