#include "core/usecase/hand_over.h"

#include "core/store/home_repository.h"

#include <algorithm>

namespace lidlark::usecase {

namespace {

bool isShared(const store::Device &device)
{
    const bool family = device.role == store::Role::Parent || device.role == store::Role::Caregiver;
    return family && !device.home.empty();
}

} // namespace

Result<std::vector<std::string>> writersOf(Workplace &workplace)
{
    std::vector<std::string> writers;
    if (!workplace.device.person.empty())
        writers.push_back(workplace.device.person);
    if (!isShared(workplace.device))
        return writers;
    const auto sheet = store::HomeRepository(workplace.database).sheet(workplace.device.home);
    if (!sheet)
        return sheet.error();
    if (!*sheet)
        return writers;
    for (const child::Person &person : (*sheet)->people) {
        const bool adult = person.kind == child::PersonKind::Adult && !person.visits;
        if (adult && !person.alias.empty())
            writers.push_back(person.alias);
    }
    std::sort(writers.begin(), writers.end());
    writers.erase(std::unique(writers.begin(), writers.end()), writers.end());
    return writers;
}

Result<store::Device> handOver(Workplace &workplace, const std::string &person)
{
    const auto writers = writersOf(workplace);
    if (!writers)
        return writers.error();
    if (std::find(writers->begin(), writers->end(), person) == writers->end())
        return Error{ErrorCode::NotFound, "person: " + person};
    store::Device device = workplace.device;
    device.person = person;
    if (const Outcome kept = store::DeviceRepository(workplace.database).setDevice(device); !kept)
        return kept.error();
    return device;
}

} // namespace lidlark::usecase
