#pragma once

#include "core/base/entropy.h"
#include "core/catalogue/catalogue.h"
#include "core/catalogue/lint.h"
#include "core/safety/reason.h"
#include "core/usecase/own_catalogue.h"
#include "core/usecase/recheck_boxes.h"

#include <optional>
#include <string>
#include <vector>

namespace lidlark::usecase {

/// "own-3f9a0c6d21".
std::string freshOwnId(Entropy &entropy);

/// Keeps a draft of a thing of the therapist's own, finished or not (catalogue/write_entry.h makes
/// the text), in the clinic's lane. An id that does not begin with "own-" is that of a built-in
/// item and says that this one measures otherwise. Errors: NotAllowed (a therapist's phone only),
/// Invalid with the field named: id, text (more than 16 KiB, or no plain text).
Outcome keepOwnItem(Workplace &therapist, const std::string &id, const std::string &text);
/// The same for an activity; its id begins with "own-".
Outcome keepOwnActivity(Workplace &therapist, const std::string &id, const std::string &text);
/// Off the desk; what was sent to boxes stays there until it is withdrawn.
Outcome throwAwayOwn(Workplace &therapist, workbench::OwnSort sort, const std::string &id);

/// All that is kept, items first, by id.
Result<std::vector<workbench::OwnKept>> ownKept(Workplace &workplace);
/// Nothing: not kept, or thrown away.
Result<std::optional<workbench::OwnKept>> ownKept(Workplace &workplace, workbench::OwnSort sort,
                                                  const std::string &id);

/// What stands between a draft and a box.
struct OwnFindings {
    std::vector<catalogue::Problem> refused;  ///< By the loader: what could hurt, what is missing.
    std::vector<catalogue::LintFinding> lint; ///< Of an activity that the loader takes.
    [[nodiscard]] bool clean() const { return refused.empty() && lint.empty(); }
};

/// The loader and the lint over one text, among the built-in entries and all that is kept.
/// @param builtIn here and below: the catalogue without anything of a therapist's own.
Result<OwnFindings> findingsIn(Workplace &workplace, const catalogue::Catalogue &builtIn,
                               workbench::OwnSort sort, const std::string &id,
                               const std::string &text);

/// Signs a kept activity off for boxes, only where nothing is found: floor, tags, both gradings and
/// put-back are there (job.md T18). The version rises where boxes know another text by it.
/// @returns what was found; clean: it is signed off. Errors: NotAllowed, NotFound.
Result<OwnFindings> publishOwnActivity(Workplace &therapist, const catalogue::Catalogue &builtIn,
                                       const std::string &id);
/// The same for an item.
Result<OwnFindings> publishOwnItem(Workplace &therapist, const catalogue::Catalogue &builtIn,
                                   const std::string &id);

/// Sends what was signed off to the box of @p child, with all own and corrected items it needs.
/// Errors: NotAllowed, NotFound (no such box; nothing kept), Invalid with the field named: a draft,
/// an item that is one, more than mostOwnEntries.
Outcome sendToBox(Workplace &therapist, const std::string &child, workbench::OwnSort sort,
                  const std::string &id);
/// Errors: those, and Invalid for an item that an own activity of the box is played with.
Outcome withdrawFromBox(Workplace &therapist, const std::string &child, workbench::OwnSort sort,
                        const std::string &id);

/// What these files would do to each box, before they are kept: the gate as for `recheckBoxes`
/// (job.md T1). Items as if they were sent to every box, activities where they are in the box.
Result<std::vector<BoxRecheck>> whoIsAffected(Workplace &workplace,
                                              const catalogue::Catalogue &builtIn,
                                              const catalogue::OwnFiles &files);

/// What a thing of the therapist's own, or a built-in one that measures otherwise, means for one
/// box.
struct OwnReach {
    BoxRecheck gate;      ///< As whoIsAffected says.
    int pieces = 0;       ///< Of it in the box, at most.
    bool avoided = false; ///< These pieces have to come out: a home of the child must avoid them.
    /// How it stands there; nothing: it was never sent.
    std::optional<workbench::OwnEntry> inBox;
};

/// For every box of the store. @param text as it would be sent.
Result<std::vector<OwnReach>> reachOfOwn(Workplace &workplace, const catalogue::Catalogue &builtIn,
                                         const std::string &id, const std::string &text);

/// What the gate says of an own activity in one box, with everyone of the home in the room.
struct OwnFit {
    std::string child; ///< Alias.
    bool fits = false;
    std::vector<safety::Reason> reasons; ///< Why it is held back.
    /// How it stands there; nothing: it was never sent.
    std::optional<workbench::OwnEntry> inBox;
};

/// For every box of the store. @param text as it would be sent. Empty where the loader refuses it
/// (findingsIn).
Result<std::vector<OwnFit>> fitOfOwn(Workplace &workplace, const catalogue::Catalogue &builtIn,
                                     const std::string &id, const std::string &text);

} // namespace lidlark::usecase
