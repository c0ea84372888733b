#pragma once

#include "core/sync/bundle.h"
#include "core/sync/exchange.h"
#include "core/sync/own_secret.h"
#include "core/sync/typed_code.h"
#include "core/wording/sentence.h"

#include <optional>
#include <string>

namespace lidlark::sync {

/// Why a storage could not be used, and what to do.
wording::Sentence sentenceFor(Trouble trouble);

/// What was met on a storage and not applied. @param who wrote it; empty: nobody known.
wording::Sentence sentenceFor(const Finding &finding, const std::string &who);

/// What is wrong with typed words.
wording::Sentence sentenceFor(const WordProblem &problem);

/// Why a file that was handed over cannot be read.
wording::Sentence sentenceFor(BundleFault fault);

/// A store that must not write; nothing where all is well.
std::optional<wording::Sentence> sentenceFor(Match match);

/// This phone's name on the storage is taken by other bytes.
wording::Sentence copiedSentence();
/// This phone is not in the crew, or no longer.
wording::Sentence outSentence();
/// There is no code to let anybody in by.
wording::Sentence noCodeSentence();
/// The storage has nothing for a recovery sheet.
wording::Sentence nothingForSheetSentence();
/// Nobody has said where the crew meets.
wording::Sentence noPlaceSentence();
/// The folder in which the crew meets is not there now.
wording::Sentence noFolderSentence();
/// A file that was to be taken in cannot be opened.
wording::Sentence noFileSentence();
/// A picture in which no code of ours can be read.
wording::Sentence noPictureSentence();
/// The code waits.
wording::Sentence nobodyYetSentence();
/// Somebody else came in by the code.
wording::Sentence codeTakenSentence();

} // namespace lidlark::sync
