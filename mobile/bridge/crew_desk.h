#pragma once

#include "core/base/clock.h"
#include "core/base/entropy.h"
#include "core/store/database.h"
#include "core/sync/secret_keeper.h"
#include "core/sync/share.h"
#include "mobile/bridge/crew_storage.h"

#include <memory>
#include <string>

namespace lidlark::mobile {

class Keychain;

/// Whose crew an errand is about.
struct Whose {
    std::string child;    ///< Alias.
    bool clinics = false; ///< The therapist's own, and no child's.
};

/// The crew's id: its box's, or the clinic's. Errors: NotFound (no such child).
Result<std::string> crewIdOf(store::Database &database, const Whose &whose);

/// Where an errand of the crew works: what another thread may hold of the phone.
struct CrewDeskPlace {
    std::string store;
    const Clock *clock = nullptr;       ///< Only asked for the time; outlives every errand.
    std::shared_ptr<Keychain> keychain; ///< Null: the phone has none.
    std::shared_ptr<Entropy> chance;    ///< Null: the system's own.
};

/// What an errand of the crew works with, on a thread of its own: the store opened once more,
/// chance of its own, and where the keys lie.
class CrewDesk
{
public:
    /// @param goOn false: the errand is to stop where it stands.
    static Result<std::unique_ptr<CrewDesk>> open(const CrewDeskPlace &place, sync::GoOn goOn);

    [[nodiscard]] store::Database &database() { return m_database; }
    [[nodiscard]] const Clock &clock() const { return m_clock; }
    [[nodiscard]] Entropy &entropy() { return *m_entropy; }
    [[nodiscard]] sync::SecretKeeper &keeper() { return *m_keeper; }
    [[nodiscard]] const sync::GoOn &goOn() const { return m_goOn; }

    /// Errors: NotFound (a store that is nobody's), NotAllowed (one that must not write).
    Result<sync::Post> post();
    /// The crew's, or why there is none. Errors: of the store and the keeper.
    Result<StorageOrWhy> storage();
    Result<std::string> crewOf(const Whose &whose);

private:
    CrewDesk(store::Database database, const Clock &clock, std::shared_ptr<Entropy> entropy,
             std::unique_ptr<sync::SecretKeeper> keeper, sync::GoOn goOn)
        : m_database(std::move(database)), m_clock(clock), m_entropy(std::move(entropy)),
          m_keeper(std::move(keeper)), m_goOn(std::move(goOn))
    {
    }

    store::Database m_database;
    const Clock &m_clock;
    std::shared_ptr<Entropy> m_entropy;
    std::unique_ptr<sync::SecretKeeper> m_keeper;
    sync::GoOn m_goOn;
};

} // namespace lidlark::mobile
