#include "core/wording/family_words.h"

namespace lidlark::wording {

Sentence unreadableFamily(const Error &problem, const std::string &file)
{
    switch (problem.code) {
    case ErrorCode::NewerSchema:
        return {say("A newer Lidlark wrote one family's file: %1. Bring Lidlark up to date on this "
                    "phone to open it. The others are as they were."),
                {file}};
    case ErrorCode::Busy:
        return {say("Another program is using one family's file: %1. Close it, then open Lidlark "
                    "again. The others are as they were."),
                {file}};
    default:
        return {say("One family's file cannot be read: %1. It was left as it is. The others are as "
                    "they were."),
                {file}};
    }
}

} // namespace lidlark::wording
