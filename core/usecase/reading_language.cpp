#include "core/usecase/reading_language.h"

#include "core/child/reading_language.h"
#include "core/store/home_repository.h"
#include "core/usecase/say_one.h"

namespace lidlark::usecase {

namespace {

constexpr auto onThePhone = "reads";

bool writesTheHomeLane(const store::Device &device)
{
    const bool family = device.role == store::Role::Parent || device.role == store::Role::Caregiver;
    return family && !device.home.empty() && !device.person.empty();
}

} // namespace

Result<std::optional<std::string>> readingLanguage(Workplace &workplace)
{
    if (!writesTheHomeLane(workplace.device))
        return store::DeviceRepository(workplace.database).localState(onThePhone);
    return store::HomeRepository(workplace.database)
        .readingLanguage(workplace.device.home, workplace.device.person);
}

Outcome readIn(Workplace &workplace, const std::string &language)
{
    if (!child::isLanguageCode(language))
        return Error{ErrorCode::Invalid, "language: " + language};
    if (!writesTheHomeLane(workplace.device))
        return store::DeviceRepository(workplace.database).setLocalState(onThePhone, language);
    const auto known = readingLanguage(workplace);
    if (!known)
        return known.error();
    if (*known == language)
        return Done{};
    return sayOne(workplace, {journal::LaneKind::Home, workplace.device.home.value},
                  journal::Kind::Reads,
                  child::fieldsOf(child::ReadingLanguage{workplace.device.person, language}));
}

} // namespace lidlark::usecase
