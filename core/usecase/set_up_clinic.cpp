#include "core/usecase/set_up_clinic.h"

#include "core/store/recording.h"
#include "core/usecase/typed_line.h"

namespace lidlark::usecase {

namespace {

constexpr std::size_t longestPerson = 40;

} // namespace

Result<store::Device> setUpClinic(Workplace &workplace, const std::string &person)
{
    const auto today = store::todayOf(workplace.clock);
    auto name = typedLine("your name", person, longestPerson);
    if (!today || !name)
        return today ? name.error() : today.error();
    if (name->empty())
        return Error{ErrorCode::Invalid, "your name: empty"};
    if (!workplace.device.id.empty())
        return Error{ErrorCode::NotAllowed, "workbench"};
    store::Device device{
        {workplace.entropy.freshId()}, *std::move(name), store::Role::Therapist, {}};
    if (const Outcome done = store::DeviceRepository(workplace.database).setDevice(device); !done)
        return done.error();
    return device;
}

} // namespace lidlark::usecase
