#pragma once

#include "core/base/clock.h"
#include "core/base/entropy.h"
#include "core/catalogue/catalogue.h"
#include "core/store/device_repository.h"

namespace lidlark::usecase {

/// All that a use case works with: this phone's store, the catalogue, the time, and chance.
struct Workplace {
    store::Database &database;
    const catalogue::Catalogue &catalogue;
    const Clock &clock;
    Entropy &entropy;
    store::Device device;
};

} // namespace lidlark::usecase
