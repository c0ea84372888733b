#include "core/usecase/clinic_word.h"

#include "core/store/recording.h"
#include "core/usecase/typed_line.h"

#include <algorithm>

namespace lidlark::usecase {

namespace {

constexpr std::size_t longestCode = 12; ///< What a label shows large [P].

} // namespace

Outcome mayKeepClinic(const Workplace &workplace)
{
    if (workplace.device.role != store::Role::Therapist)
        return Error{ErrorCode::NotAllowed, "workbench"};
    return Done{};
}

Outcome sayInClinic(Workplace &workplace, journal::Kind kind, std::string fields,
                    const std::string &author)
{
    if (Outcome may = mayKeepClinic(workplace); !may)
        return may;
    auto recording = store::Recording::begin(workplace.database, workplace.device, workplace.clock);
    if (!recording)
        return recording.error();
    const std::string who = author.empty() ? workplace.device.person : author;
    if (Outcome said = recording->sayAs(who, store::clinicLane, kind, std::move(fields)); !said)
        return said;
    return recording->commit();
}

Result<std::string> boxCode(const std::string &typed)
{
    auto code = typedLine("box code", typed, longestCode);
    if (!code)
        return code;
    if (code->empty())
        return Error{ErrorCode::Invalid, "box code: empty"};
    std::ranges::transform(*code, code->begin(), [](char letter) {
        return letter >= 'a' && letter <= 'z' ? static_cast<char>(letter - 'a' + 'A') : letter;
    });
    return code;
}

Error aboutBox(const std::string &code, const std::string &what)
{
    return {ErrorCode::Invalid, code + ": " + what};
}

} // namespace lidlark::usecase
