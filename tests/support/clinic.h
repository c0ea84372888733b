#pragma once

#include "core/store/clinic_repository.h"
#include "core/store/projector.h"
#include "core/usecase/keep_build.h"
#include "core/usecase/keep_design.h"
#include "core/usecase/keep_supply.h"
#include "core/usecase/pack_box.h"
#include "core/usecase/tend_box.h"

#include "tests/support/phone.h"

namespace lidlark::test {

/// A therapist's phone, or an assistant's beside it, at the packing table.
inline std::unique_ptr<Phone> packer(const std::string &person)
{
    auto phone = std::make_unique<Phone>(person, store::Role::Therapist, "");
    phone->clock.moveTo(islandTime(4, 10, 0));
    return phone;
}

/// @p to takes in all of the clinic that @p from holds. @returns how much was new.
inline int takeClinic(Phone &from, Phone &to)
{
    usecase::Workplace mine = to.workplace();
    const auto taken = usecase::takeEventsFrom(from.database, mine, [](const journal::Lane &lane) {
        return lane.kind == journal::LaneKind::Clinic;
    });
    return taken ? *taken : -1;
}

/// Both ways, with the words about what each holds.
inline void meetAtTable(Phone &a, Phone &b)
{
    (void)takeClinic(a, b);
    (void)takeClinic(b, a);
}

/// A small design: six bands, a pot of dough, one pair of scissors.
inline workbench::Design smallDesign()
{
    return {{}, "Standard", {{{"bands"}, 6, {}}, {{"dough"}, 1, {}}, {{"scissors"}, 1, {}}}};
}

inline workbench::KeptBox standardBox(const std::string &code, const std::string &whose,
                                      const workbench::DesignId &design)
{
    return {{code, whose, design, smallDesign().parts}, {}, false};
}

/// A build of that design on @p phone, without a box.
struct Table {
    workbench::DesignId design;
    workbench::BuildId build;
};

inline Table tableOn(auto &phone)
{
    usecase::Workplace workplace = phone.workplace();
    const auto design = usecase::keepDesign(workplace, smallDesign());
    const auto build =
        usecase::startBuild(workplace, {{}, "Spring boxes", *dayFrom({2027, 1, 4}), "GBP", 10, {}});
    return {*design, *build};
}

/// What the table shows of one box; an empty one where it is not there.
inline workbench::PackBox boxOn(auto &phone, const Table &table, const std::string &code)
{
    usecase::Workplace workplace = phone.workplace();
    const auto shown = usecase::packTable(workplace, table.build);
    const workbench::PackBox *box = shown ? shown->box(code) : nullptr;
    return box != nullptr ? *box : workbench::PackBox{};
}

/// The hand that a line asks for is what is read off the thing.
inline bool packAll(auto &phone, const Table &table, const std::string &code)
{
    usecase::Workplace workplace = phone.workplace();
    for (const workbench::PackLine &line : boxOn(phone, table, code).lines) {
        if (!usecase::packLine(workplace, {table.build, code, line.item}, line.hand).ok())
            return false;
    }
    return true;
}

inline bool lookOverAll(auto &phone, const Table &table, const std::string &code,
                        const std::string &author = {})
{
    usecase::Workplace workplace = phone.workplace();
    for (const workbench::PackLine &line : boxOn(phone, table, code).lines) {
        if (!usecase::lookOver(workplace, {table.build, code, line.item, author}).ok())
            return false;
    }
    return true;
}

inline bool rowsMatch(auto &phone)
{
    const auto same = store::Projector(phone.database).matchesRefold();
    return same && *same;
}

} // namespace lidlark::test
