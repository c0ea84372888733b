#pragma once

#include "tests/lint/compile_command.h"

#include <string>
#include <utility>
#include <vector>

namespace lidlark::lint {

/// Source files that clang-tidy reads as one. Nine tenths of its time goes into the headers of the
/// libraries, so thirty files at once take little longer than one.
using Batch = std::vector<CompileCommand>;

/// @p commands in batches of at most @p most files with the same flags, apart from what
/// is each target's own; the largest first, so that two workers end at about the same time.
std::vector<Batch> batchesOf(const std::vector<CompileCommand> &commands, std::size_t most);

/// The two halves of a batch of more than one file: files that cannot be read together, because
/// each has something of the same name to itself, are parted until they can.
std::pair<Batch, Batch> halvesOf(const Batch &batch);

/// Flags under which each file of @p batch finds what moc made for it.
std::string flagsOf(const Batch &batch);

/// C++ text that includes every file of @p batch, each main() under a name of its own.
std::string sourceOf(const Batch &batch);

} // namespace lidlark::lint
