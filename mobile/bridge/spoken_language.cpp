#include "mobile/bridge/spoken_language.h"

#include <utility>

namespace lidlark::mobile {

namespace {

SpokenLanguage &current()
{
    static SpokenLanguage language;
    return language;
}

} // namespace

const SpokenLanguage &spokenLanguage()
{
    return current();
}

void setSpokenLanguage(SpokenLanguage language)
{
    current() = std::move(language);
}

bool speaksEnglish()
{
    return current().code == QLatin1String("en");
}

} // namespace lidlark::mobile
