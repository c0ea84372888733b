#include "core/cli/print_box.h"

#include "core/cli/box_json.h"
#include "core/store/recording.h"

#include <iostream>

namespace lidlark::cli {

int printBox(Desk &desk, const std::string &child)
{
    const auto family = usecase::loadFamily(desk.workplace(), child);
    const auto today = store::todayOf(desk.workplace().clock);
    if (!family || !today)
        return fail(family ? today.error() : family.error());
    std::cout << boxJson(*family, desk.catalogue(), *today).dump() << '\n';
    return allWell;
}

} // namespace lidlark::cli
