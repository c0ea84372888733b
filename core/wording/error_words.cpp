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

std::string detailOr(const Error &error, const char *unsaid)
{
    return error.detail.empty() ? unsaid : error.detail;
}

} // namespace

Sentence sentenceFor(const Error &error)
{
    switch (error.code) {
    case ErrorCode::NotFound:
        return {"Lidlark cannot find %1. Nothing was changed. Check the name, then try again.",
                {detailOr(error, "what was asked for")}};
    case ErrorCode::Invalid:
        return {"That does not fit: %1. Nothing was changed. Put it right, then try again.",
                {detailOr(error, "what was typed")}};
    case ErrorCode::Unreadable:
        return {"This file is damaged or is not a Lidlark store: %1. It was left as it is. Use "
                "another file, or ask for a copy from another phone of your crew.",
                {detailOr(error, "no name")}};
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
                {longDay(detailOr(error, "no date"))}};
    case ErrorCode::BeforeBirth:
        return {"On %1 your child was not born yet. Nothing was changed. Check the phone's "
                "date and the birth month.",
                {longDay(detailOr(error, "that day"))}};
    case ErrorCode::NotAllowed:
        return {"That is for the family to say. Nothing was changed. Tell them, and they note it.",
                {}};
    case ErrorCode::AccessEnded:
        return {"Your time with this box ended on %1. What you noted stays with the family. They "
                "can ask you again.",
                {longDay(detailOr(error, "an earlier day"))}};
    case ErrorCode::AlreadyAnswered:
        break;
    }
    return {"%1 answered that question before. Nothing was lost, and that answer stands.",
            {detailOr(error, "Somebody")}};
}

} // namespace lidlark::wording
