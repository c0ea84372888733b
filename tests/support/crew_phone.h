#pragma once

#include "core/sync/exchange.h"
#include "core/sync/found_crew.h"
#include "core/sync/let_in.h"

#include "tests/support/phone.h"

#include <optional>

namespace lidlark::test {

/// A phone with a secret of its own, in a crew: real seals, store, exchange. Only clock, chance and
/// the wire are made up.
struct CrewPhone : Phone {
    crypto::DeviceSecret secret;

    CrewPhone(const std::string &person, store::Role role, const std::string &home)
        : Phone(person, role, home), secret(sync::freshSecret(entropy))
    {
    }

    [[nodiscard]] sync::Post post() { return {database, clock, entropy, device, secret}; }

    [[nodiscard]] crew::Member asMember(std::optional<Day> until = {}) const
    {
        crew::Member member = sync::memberOf(device, secret);
        member.until = until;
        return member;
    }

    Outcome found(const std::string &box)
    {
        sync::Post mine = post();
        return sync::foundCrew(mine, box);
    }

    /// Lets @p other in: what it is given goes through a sealed letter.
    Outcome letIn(CrewPhone &other, const std::string &box, std::optional<Day> until = {})
    {
        sync::Post mine = post();
        const auto welcome = sync::letIn(mine, box, other.asMember(until));
        if (!welcome)
            return welcome.error();
        const auto read = sync::welcomeIn(sync::letterOf(*welcome, entropy), other.secret);
        if (!read)
            return Error{ErrorCode::Unreadable, "welcome"};
        sync::Post theirs = other.post();
        const Outcome settled = sync::settleIn(theirs, *read);
        other.device = theirs.device;
        return settled;
    }

    sync::Exchanged exchange(const std::string &box, sync::Storage &storage)
    {
        sync::Post mine = post();
        const auto report = sync::exchange(mine, box, storage);
        if (report)
            return *report;
        sync::Exchanged failed;
        failed.received = -1;
        return failed;
    }
};

} // namespace lidlark::test
