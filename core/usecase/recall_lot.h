#pragma once

#include "core/store/clinic_repository.h"
#include "core/usecase/workplace.h"

namespace lidlark::usecase {

/// Every box that is not retired and may hold a lot (job.md T15), by box. Spaces, hyphens and small
/// letters make no difference. @param item empty: whichever.
/// Errors: Invalid (no letter or digit typed, too long).
Result<std::vector<store::LotFound>> recallLot(Workplace &therapist, const std::string &lot,
                                               const ItemId &item = {});

} // namespace lidlark::usecase
