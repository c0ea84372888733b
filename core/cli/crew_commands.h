#pragma once

#include "core/cli/crew_storage.h"
#include "core/cli/options.h"
#include "core/sync/join_code.h"
#include "core/sync/share.h"
#include "core/wording/sentence.h"

#include <array>
#include <string>

namespace lidlark::cli {

/// What `join` is asked: one of makeCode, code, accept, remove, makeSheet, sheet.
struct JoinOptions {
    bool makeCode = false;
    std::string role;  ///< Of whoever is asked in.
    std::string home;  ///< Of whoever is asked in; empty: this phone's.
    std::string until; ///< A guest's last day; empty: the seventh.
    std::string code;  ///< Nine words.
    std::string person;
    bool anew =
        false; ///< The store is a copy of another phone's, or was taken out: it comes in as new.
    bool accept = false;
    bool makeSheet = false; ///< A recovery sheet.
    std::string sheet;      ///< Its twice nine words.
    std::string remove;     ///< A device.
    std::string child;      ///< Whose crew; empty: the only one.
    bool clinic = false;    ///< The clinic's crew, and no child's.
    PlaceOptions place;
};

/// What `sync` is asked: an exchange, or a file handed over or taken in.
struct SyncOptions {
    PlaceOptions place;
    std::string handOver; ///< File to write.
    std::string takeIn;   ///< File to read.
    std::string child;
    bool clinic = false; ///< The clinic's crew, and no child's: of a file.
};

/// What `erase` is asked.
struct EraseOptions {
    std::string what; ///< check-ins or plays.
    std::string upTo; ///< Day; empty: today.
};

int runJoin(const Options &options, const JoinOptions &join);
int runSync(const Options &options, const SyncOptions &sync);
int runErase(const Options &options, const EraseOptions &erase);

/// The way in of a phone that has the code: a store that is nobody's yet, or one that was set back
/// or copied.
int comeIn(const Options &options, const JoinOptions &join, sync::Storage &storage);

/// Three words that both phones show.
std::string sameText(const std::array<std::string, 3> &words);
/// Prints what cut an exchange short; the next one goes on. @returns the exit status.
int statusOf(const sync::Shared &shared);
int makeSheet(Desk &desk, const JoinOptions &join, sync::Post &post);
/// A fresh store comes back by the words of a sheet.
int useSheet(const Options &options, const JoinOptions &join, sync::Storage &storage);

/// "chess buzz polka ...".
std::string joinedWords(const sync::JoinSecret &secret);

/// Prints one sentence to standard error. @returns problemInData.
int failWith(const wording::Sentence &sentence);

/// The only box of the store, or that of the child asked for.
Result<std::string> boxOf(Desk &desk, const std::string &child);
/// Whose crew is asked for: a box's, or the clinic's.
Result<std::string> crewAsked(Desk &desk, const std::string &child, bool clinic);

} // namespace lidlark::cli
