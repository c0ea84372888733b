#pragma once

#include <span>
#include <string_view>

namespace lidlark::store {

/// One numbered step of the schema. Numbers rise by one from 1.
struct Migration {
    int number;
    std::string_view name;
    std::string_view sql;
};

/// All steps in order, embedded from `migrations/NNN_name.sql` by the build.
std::span<const Migration> migrations();

} // namespace lidlark::store
