#pragma once

#include "core/sync/knock.h"
#include "core/sync/share.h"
#include "core/sync/typed_code.h"

#include "tests/support/memory_keeper.h"
#include "tests/support/phone.h"

namespace lidlark::test {

/// A phone with Lidlark freshly on it: nobody's, until it comes in by a code.
struct NewPhone {
    store::Database database;
    StillClock clock;
    SeededEntropy entropy;
    MemoryKeeper keeper;

    NewPhone(const std::string &name, std::int64_t now)
        : database(*store::Database::open(":memory:")), clock(now), entropy("test new " + name)
    {
    }

    /// Nine words, typed in. Errors: those of beginJoining; Invalid where they are none.
    Result<sync::Joining> type(const std::string &words, const std::string &person)
    {
        const auto secret = sync::secretFromWords(words);
        if (!std::holds_alternative<sync::JoinSecret>(secret))
            return Error{ErrorCode::Invalid, "words"};
        return sync::beginJoining(database, clock, entropy, keeper,
                                  std::get<sync::JoinSecret>(secret), person);
    }
    /// Knocks, and looks. @returns nothing where it failed.
    std::optional<sync::Step> look(sync::Storage &storage)
    {
        const auto step = sync::goOnJoining(database, clock, entropy, keeper, storage);
        const bool answered = step && std::holds_alternative<sync::Step>(*step);
        return answered ? std::optional(std::get<sync::Step>(*step)) : std::nullopt;
    }
    [[nodiscard]] std::optional<sync::Opened> open()
    {
        auto opened = sync::openPost(database, clock, entropy, keeper);
        return opened ? std::optional(*std::move(opened)) : std::nullopt;
    }
    /// @returns what came of it; nothing where it failed, or the phone is nobody's.
    std::optional<sync::Shared> share(sync::Storage &storage)
    {
        auto opened = open();
        if (!opened)
            return std::nullopt;
        auto shared = sync::shareAll(opened->post, opened->match, keeper, storage);
        return shared ? std::optional(*std::move(shared)) : std::nullopt;
    }
    [[nodiscard]] usecase::Workplace workplace()
    {
        const auto device = store::DeviceRepository(database).device();
        return {database, realCatalogue(), clock, entropy,
                device && *device ? **device : store::Device{}};
    }
};

} // namespace lidlark::test
