#pragma once

#include "core/cli/crew_storage.h"
#include "core/cli/options.h"
#include "core/wording/sentence.h"

#include <string>

namespace lidlark::cli {

/// What `join` is asked: one of makeCode, code, accept, remove.
struct JoinOptions {
    bool makeCode = false;
    std::string role;  ///< Of whoever is asked in.
    std::string home;  ///< Of whoever is asked in; empty: this phone's.
    std::string until; ///< A guest's last day; empty: the seventh.
    std::string code;  ///< Nine words.
    std::string person;
    bool accept = false;
    std::string remove; ///< A device.
    std::string child;  ///< Whose crew; empty: the only one.
    PlaceOptions place;
};

/// What `sync` is asked: an exchange, or a file handed over or taken in.
struct SyncOptions {
    PlaceOptions place;
    std::string handOver; ///< File to write.
    std::string takeIn;   ///< File to read.
    std::string child;
};

/// What `erase` is asked.
struct EraseOptions {
    std::string what; ///< check-ins or plays.
    std::string upTo; ///< Day; empty: today.
};

int runJoin(const Options &options, const JoinOptions &join);
int runSync(const Options &options, const SyncOptions &sync);
int runErase(const Options &options, const EraseOptions &erase);

/// Prints one sentence to standard error. @returns problemInData.
int failWith(const wording::Sentence &sentence);

/// The only box of the store, or that of the child asked for.
Result<std::string> boxOf(Desk &desk, const std::string &child);

} // namespace lidlark::cli
