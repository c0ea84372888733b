#pragma once

#include "core/usecase/island.h"
#include "core/usecase/workplace.h"

#include <memory>

namespace lidlark::usecase {

/// Somebody of the island with a phone of their own.
struct DemoPerson {
    std::string person;
    store::Role role = store::Role::Parent;
    std::string child; ///< Empty: the therapist, who has all.
    std::string home;
    std::string device;
    std::string file;
    std::string reads = {};                  ///< Language; empty: they have not said.
    std::optional<Day> until = std::nullopt; ///< A guest's last day.
};

/// A demo phone, opened: its store, and a clock that the demo moves.
struct DemoPhone {
    store::Database database;
    store::Device device;
    const catalogue::Catalogue &catalogue;
    StillClock clock;
    SeededEntropy entropy;

    DemoPhone(store::Database store, store::Device owner, const catalogue::Catalogue &entries,
              const std::string &seed);
    static Result<std::unique_ptr<DemoPhone>> open(const std::string &folder,
                                                   const DemoPerson &person,
                                                   const catalogue::Catalogue &catalogue);
    /// The phone's person reads @p language, unless they have said before; empty: nothing is said.
    Outcome startReading(const std::string &language);
    [[nodiscard]] Workplace workplace() { return {database, catalogue, clock, entropy, device}; }
};

/// "Gran Isobel" -> "gran-isobel".
std::string demoId(const std::string &alias);

/// Half past six in the evening of a demo day (1 = 11 January 2027), and the morning on which the
/// boxes were handed over. Scotland in winter: local time is UTC.
std::int64_t demoEveningMs(int day);
std::int64_t demoIssueMs();

} // namespace lidlark::usecase
