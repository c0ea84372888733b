#include "core/usecase/recall_lot.h"

#include "core/usecase/typed_line.h"
#include "core/workbench/lot.h"

namespace lidlark::usecase {

Result<std::vector<store::LotFound>> recallLot(Workplace &therapist, const std::string &lot,
                                               const ItemId &item)
{
    const auto line = typedLine("lot", lot, workbench::longestLot);
    if (!line)
        return line.error();
    const std::string key = workbench::lotKey(*line);
    if (key.empty())
        return Error{ErrorCode::Invalid, "lot: empty"};
    return store::ClinicRepository(therapist.database).boxesWith(key, item);
}

} // namespace lidlark::usecase
