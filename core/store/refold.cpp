#include "core/store/refold.h"

#include "core/store/device_repository.h"
#include "core/store/projector.h"

namespace lidlark::store {

namespace {

constexpr auto foldKey = "rows.folded-by";

} // namespace

Outcome refoldIfOld(Database &database)
{
    DeviceRepository local(database);
    const std::string now = std::to_string(foldVersion);
    const auto then = local.localState(foldKey);
    if (!then)
        return then.error();
    if (*then && **then == now)
        return Done{};
    Result<Transaction> transaction = Transaction::begin(database);
    if (!transaction)
        return transaction.error();
    if (Outcome done = Projector(database).refold(); !done)
        return done;
    if (Outcome done = local.setLocalState(foldKey, now); !done)
        return done;
    return transaction->commit();
}

} // namespace lidlark::store
