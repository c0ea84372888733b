#include "mobile/bridge/guarding_words.h"

namespace lidlark::mobile {

namespace {

// Unicode UAX #9: what stands between them runs from left to right, whatever is around it.
constexpr QChar leftToRight(0x2066);
constexpr QChar endOfIsolate(0x2069);

} // namespace

QString withEnglishUnder(const std::string &line, const std::string &english)
{
    if (english.empty() || english == line)
        return fromCore(line);
    return fromCore(line) + u'\n' + leftToRight + fromCore(english) + endOfIsolate;
}

} // namespace lidlark::mobile
