#pragma once

#include "core/catalogue/catalogue.h"
#include "core/store/device_repository.h"

#include <string>
#include <vector>

namespace lidlark::usecase {

/// One phone of the demo island.
struct DemoStore {
    std::string file; ///< Name within the demo's folder: "fin-ruth.lidlark".
    std::string person;
    store::Role role = store::Role::Parent;
    std::string child; ///< Alias; empty on the therapist's phone, which has all.
    std::string device;
};

/// Writes the demo island into @p folder: one store a phone, a quiet first week, then the evenings
/// before @p day (1 = Monday 11 January 2027). An island that is there already is moved on, never
/// back. Everything is repeatable: the same folder contents every time.
/// Errors: Unwritable (no such folder, no permission), Unreadable (a foreign file in the way),
/// Invalid (day below 1 or above 365).
Result<std::vector<DemoStore>> writeDemo(const std::string &folder, int day,
                                         const catalogue::Catalogue &catalogue);

} // namespace lidlark::usecase
