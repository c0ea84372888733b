#include "core/catalogue/read_life.h"

namespace lidlark::catalogue {

namespace {

/// A look without words leaves a family guessing; words without a look are never shown.
void checkLook(RecordReader &record, const Life &life)
{
    const bool looked = life.checkDays || life.checkEachUse;
    if (looked && life.check.empty())
        record.complain("check", "is missing: what is there to look for?");
    if (!looked && !life.check.empty())
        record.complain("check", "needs check_days or check_each_use: when is it looked at?");
}

} // namespace

Life readLife(RecordReader &item)
{
    Life life;
    if (!item.has("life"))
        return life;
    auto record = item.record("life");
    if (!record)
        return life;
    life.openedDays = record->optionalNumber("opened_days", {1, 3650});
    life.openAirDays = record->optionalNumber("open_air_days", {1, 365});
    life.replaceDays = record->optionalNumber("replace_days", {1, 3650});
    life.checkDays = record->optionalNumber("check_days", {1, 365});
    life.checkEachUse = record->optionalFlag("check_each_use");
    life.check = record->optionalText("check");
    if (record->has("rescue"))
        life.rescue = record->texts("rescue", {0, 4});
    life.singleUse = record->optionalFlag("single_use");
    checkLook(*record, life);
    record->finish();
    return life;
}

std::optional<UsePrior> readUse(RecordReader &item)
{
    if (!item.has("use"))
        return std::nullopt;
    auto record = item.record("use");
    if (!record)
        return std::nullopt;
    const UsePrior use{record->number("pieces", {1, 1000}), record->number("days", {1, 3650})};
    record->finish();
    return use;
}

} // namespace lidlark::catalogue
