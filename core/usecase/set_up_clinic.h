#pragma once

#include "core/store/device_repository.h"
#include "core/usecase/workplace.h"

#include <string>

namespace lidlark::usecase {

/// Makes this store the phone of somebody who packs boxes for children: a device with a name and no
/// home. Nothing else is said; boxes come to it as they are packed and handed over, or by a code.
/// @param person alias. @returns the device. Errors: Invalid (an empty or over-long name),
/// NotAllowed (the store is set up already), ClockUnset.
Result<store::Device> setUpClinic(Workplace &workplace, const std::string &person);

} // namespace lidlark::usecase
