#include "core/usecase/notes_lane.h"

#include "core/base/digest.h"

namespace lidlark::usecase {

journal::Lane notesLaneOf(const store::Device &device)
{
    constexpr std::size_t digits = 32; // half of the hash is far more than a family can mistake
    const std::string whose = device.home.value + '\n' + device.person;
    return {journal::LaneKind::Notes, hexOf(blake2b(whose)).substr(0, digits)};
}

} // namespace lidlark::usecase
