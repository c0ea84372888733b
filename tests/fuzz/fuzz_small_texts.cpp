#include "tests/fuzz/target.h"

#include "core/base/day.h"
#include "core/base/hex.h"
#include "core/base/instant.h"
#include "core/base/part_of_day.h"
#include "core/base/utf8.h"
#include "core/child/phone_number.h"
#include "core/child/reading_language.h"
#include "core/journal/lane.h"
#include "core/sync/percent.h"

namespace lidlark::fuzz {

void smallTexts(std::string_view bytes)
{
    if (const auto read = bytesFromHex(bytes))
        must(hexOf(*read) == bytes, "hexadecimal digits have one spelling");
    must(bytesFromHex(hexOf(bytes)) == std::string(bytes), "any bytes have hexadecimal digits");
    if (const auto read = sync::percentDecoded(bytes))
        must(sync::percentEncoded(*read) == bytes, "percent signs have one spelling");
    must(sync::percentDecoded(sync::percentEncoded(bytes)) == std::string(bytes),
         "any bytes can be written with percent signs");
    if (const auto day = dayFromText(bytes))
        must(toText(*day) == bytes, "a day has one spelling");
    if (const auto ms = msFromText(bytes); ms && *ms >= 0)
        must(msFromText(textFromMs(*ms)) == ms, "an instant is read as written");
    if (const auto lane = journal::laneFromText(bytes))
        must(toText(*lane) == bytes, "a lane has one spelling");
    if (const auto part = partOfDayFromText(bytes))
        must(toText(*part) == bytes, "a part of day has one spelling");
    if (child::isPhoneNumber(bytes))
        must(child::isPhoneNumber(child::dialled(bytes)), "what is dialled is a number");
    if (child::isLanguageCode(bytes))
        must(isPlainUtf8(bytes), "a language is plain text");
}

} // namespace lidlark::fuzz
