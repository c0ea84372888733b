#pragma once

#include "core/base/day.h"
#include "core/base/id.h"
#include "core/base/instant.h"
#include "core/crew/role.h"
#include "core/store/database.h"

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace lidlark::store {

using crew::Role;
using crew::roleNames;

/// Whose phone this is.
struct Device {
    DeviceId id;
    std::string person; ///< Alias; the author of what is written here.
    Role role = Role::Parent;
    HomeId home;                             ///< Empty for a therapist's.
    std::optional<Day> until = std::nullopt; ///< A guest's last day; absent: no end.
};

/// What only this phone knows: who it is, its clock so far, and where a screen was left.
class DeviceRepository
{
public:
    explicit DeviceRepository(Database &database) : m_database(database) {}

    /// @returns nothing in a store that has never been set up.
    Result<std::optional<Device>> device();
    Outcome setDevice(const Device &device);

    Result<std::optional<std::string>> localState(const std::string &key);
    /// A whole number kept as state; 0 where there is none.
    Result<std::int64_t> localNumber(const std::string &key);
    Outcome setLocalState(const std::string &key, const std::string &value);
    Outcome clearLocalState(const std::string &key);
    /// What the phone itself keeps, whoever's families are on it: keys that begin with "phone.",
    /// and how it shows things.
    Result<std::vector<std::pair<std::string, std::string>>> phoneState();

    Result<Instant> lastInstant(const std::string &which);
    Outcome setLastInstant(const std::string &which, Instant instant);

private:
    Database &m_database;
};

} // namespace lidlark::store
