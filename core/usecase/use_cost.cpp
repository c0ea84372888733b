#include "core/usecase/use_cost.h"

#include "core/store/box_repository.h"
#include "core/store/clinic_repository.h"
#include "core/store/recording.h"
#include "core/store/shared_copies.h"
#include "core/usecase/build_sheet.h"
#include "core/usecase/keep_limits.h"

#include <algorithm>
#include <map>
#include <set>

namespace lidlark::usecase {

namespace {

using workbench::BoxInUse;
using workbench::BuildId;

/// A box's cost, and in which currency; nothing where it cannot be told.
struct Told {
    workbench::MaterialPence material;
    std::string currency;
};

/// The boxes of a clinic with their uses; each build is reckoned once.
class InUse
{
public:
    InUse(Workplace &therapist, Day since) : m_therapist(therapist), m_since(since) {}

    Outcome add(const workbench::BoxStatus &status)
    {
        const auto box = store::BoxRepository(m_therapist.database).boxOf(status.child);
        if (!box || !m_children.insert(box->child).second)
            return Done{}; // it is with nobody whose record is here
        const auto plays =
            store::sharedPlays(m_therapist.database, box->child, std::max(m_since, status.day));
        if (!plays)
            return plays.error();
        if (plays->empty())
            return Done{};
        const auto told = costOf(status);
        if (!told)
            return told.error();
        if (*told)
            m_boxes[(*told)->currency].push_back(
                {(*told)->material, static_cast<std::int64_t>(plays->size())});
        else
            ++m_leftOut;
        return Done{};
    }

    /// In the currency that most of the boxes are reckoned in.
    void tell(UseCost &cost) const
    {
        cost.leftOut = m_leftOut;
        const std::vector<BoxInUse> *most = nullptr;
        for (const auto &[currency, boxes] : m_boxes) {
            cost.leftOut += static_cast<int>(boxes.size());
            if (most != nullptr && boxes.size() <= most->size())
                continue;
            most = &boxes;
            cost.currency = currency;
        }
        if (most == nullptr)
            return;
        cost.leftOut -= static_cast<int>(most->size());
        cost.cost = workbench::costPerUse(*most);
    }

private:
    Result<std::optional<Told>> costOf(const workbench::BoxStatus &status)
    {
        std::optional<Told> told;
        std::optional<Day> day;
        for (const std::string &id : status.builds) {
            if (!m_sheets.contains(id)) {
                auto sheet = buildSheetOf(m_therapist, BuildId{id});
                if (!sheet && sheet.error().code != ErrorCode::NotFound)
                    return sheet.error();
                m_sheets.emplace(id, sheet ? std::optional(*std::move(sheet)) : std::nullopt);
            }
            const auto &sheet = m_sheets.at(id);
            if (!sheet || (day && sheet->build.day < *day))
                continue; // as it was packed last
            day = sheet->build.day;
            told = inSheet(*sheet, status.code);
        }
        return told;
    }

    static std::optional<Told> inSheet(const BuildSheet &kept, const std::string &code)
    {
        const auto *sheet = std::get_if<workbench::Sheet>(&kept.sheet);
        const auto box =
            std::ranges::find(kept.build.boxes, code, [](const auto &one) { return one.box.code; });
        if (sheet == nullptr || box == kept.build.boxes.end())
            return std::nullopt;
        const auto &cost = sheet->boxes[static_cast<std::size_t>(box - kept.build.boxes.begin())];
        return cost.unpriced.empty() ? std::optional(Told{cost.material, kept.build.currency})
                                     : std::nullopt;
    }

    Workplace &m_therapist;
    Day m_since;
    std::set<ChildId> m_children;
    std::map<std::string, std::optional<BuildSheet>> m_sheets;
    std::map<std::string, std::vector<BoxInUse>> m_boxes; ///< By currency.
    int m_leftOut = 0;
};

} // namespace

Result<UseCost> useCost(Workplace &therapist)
{
    if (therapist.device.role != store::Role::Therapist)
        return Error{ErrorCode::NotAllowed, "cost per use"};
    const auto today = store::todayOf(therapist.clock);
    store::ClinicRepository clinic(therapist.database);
    const auto boxes = clinic.boxes();
    if (!today || !boxes)
        return today ? boxes.error() : today.error();
    UseCost cost{today->day - playDays, today->day, std::nullopt, "GBP", 0};
    InUse inUse(therapist, cost.since);
    for (const auto &[code, standing] : *boxes) {
        if (standing != workbench::Standing::Issued)
            continue;
        const auto status = clinic.status(code);
        if (!status)
            return status.error();
        if (!*status)
            continue;
        if (Outcome done = inUse.add(**status); !done)
            return done.error();
    }
    inUse.tell(cost);
    return cost;
}

} // namespace lidlark::usecase
