#pragma once

#include "tests/support/phone.h"

#include <QString>

namespace lidlark::test {

/// What happens on a phone while nobody looks at its screen.
template <typename What> void onPhone(const QString &store, std::int64_t atMs, What what)
{
    auto database = store::Database::open(store.toStdString());
    const auto device = store::DeviceRepository(*database).device();
    StillClock clock(atMs);
    SeededEntropy entropy("workbench");
    usecase::Workplace workplace{*database, realCatalogue(), clock, entropy, **device};
    what(workplace);
}

} // namespace lidlark::test
