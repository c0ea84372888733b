#pragma once

#include "core/sync/bundle_of_crew.h"
#include "core/sync/bundle_storage.h"
#include "core/sync/own_secret.h"
#include "core/sync/share.h"
#include "powerless_storage.h"

#include "tests/support/crew_phone.h"
#include "tests/support/memory_keeper.h"

namespace lidlark::test {

/// A phone of the simulation: its clock may be wrong, it has a keychain, and a backup of its store
/// may come back.
struct SimPhone : CrewPhone {
    MemoryKeeper keeper;
    std::int64_t wrongBy = 0; ///< Milliseconds that its clock is ahead.
    bool in = false;          ///< It was let in, and nobody has removed it.
    DeviceId was;             ///< Its id before it was restored.
    std::string backup;       ///< The path of one; empty: none.

    SimPhone(const std::string &person, store::Role role, const std::string &home)
        : CrewPhone(person, role, home)
    {
        const auto own = sync::ownSecret(database, device.id, keeper, entropy);
        secret = own->secret;
    }

    void tell(std::int64_t nowMs) { clock.moveTo(nowMs + wrongBy); }

    [[nodiscard]] crew::Member asNewcomer(std::optional<Day> until) const
    {
        crew::Member member = asMember(until);
        member.was = was;
        return member;
    }

    /// The store as a backup program would keep it.
    bool backUp(const std::string &path)
    {
        std::filesystem::remove(path);
        backup = path;
        return database.run("VACUUM INTO '" + path + "'").ok();
    }

    /// The store is set back to the backup.
    void restore()
    {
        database = *store::Database::open(backup);
        (void)database.run("PRAGMA journal_mode = MEMORY; PRAGMA synchronous = OFF;");
    }

    /// What is found out at the next start: an older store than the keychain knows of.
    sync::Match match()
    {
        const auto own = sync::ownSecret(database, device.id, keeper, entropy);
        return own ? own->match : sync::Match::Strange;
    }

    /// It goes on under a new id, and is in no crew until it is let in anew.
    bool becomeAnother()
    {
        sync::Post mine = post();
        const bool done = sync::takeNewId(mine, keeper).ok();
        was = device.id;
        device = mine.device;
        secret = mine.secret;
        in = false;
        return done;
    }
};

} // namespace lidlark::test
