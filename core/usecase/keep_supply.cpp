#include "core/usecase/keep_supply.h"

#include "core/usecase/clinic_word.h"
#include "core/usecase/typed_line.h"
#include "core/workbench/lot.h"

namespace lidlark::usecase {

namespace {

constexpr std::size_t longestId = 40;

/// Ids go into subjects and file names: small letters, digits and hyphens alone.
bool isItemId(const std::string &id)
{
    return !id.empty() && id.size() <= longestId &&
           id.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789-") == std::string::npos;
}

Outcome tidy(const std::string &field, std::string &words, std::size_t most)
{
    auto line = typedLine(field, words, most);
    if (!line)
        return line.error();
    words = *std::move(line);
    return Done{};
}

Outcome tidyWords(workbench::KeptSupply &kept)
{
    if (Outcome done = tidy("name", kept.supply.name, workbench::longestName); !done)
        return done;
    if (Outcome done = tidy("lot", kept.lot, workbench::longestLot); !done)
        return done;
    if (Outcome done = tidy("note", kept.note, workbench::longestName); !done)
        return done;
    for (workbench::PackOffer &offer : kept.supply.offers) {
        if (Outcome done = tidy("shop", offer.shop, workbench::longestName); !done)
            return done;
    }
    return Done{};
}

} // namespace

Outcome keepSupply(Workplace &therapist, workbench::KeptSupply supply)
{
    if (!isItemId(supply.supply.item.value))
        return Error{ErrorCode::Invalid, "item: small letters, digits and hyphens only"};
    if (Outcome tidied = tidyWords(supply); !tidied)
        return tidied;
    if (const auto problem = workbench::problemWith(supply))
        return Error{ErrorCode::Invalid, *problem};
    return sayInClinic(therapist, journal::Kind::Supply, workbench::fieldsOf(supply));
}

Result<workbench::KeptSupplies> keptSupplies(Workplace &therapist)
{
    return store::ClinicRepository(therapist.database).supplies();
}

} // namespace lidlark::usecase
