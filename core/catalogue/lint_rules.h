#pragma once

#include "core/catalogue/family_lines.h"
#include "core/catalogue/lint.h"

/// The rules of `lint`, a file each. Each adds what it finds.
namespace lidlark::catalogue {

using LintFindings = std::vector<LintFinding>;

/// Sentences of at most 20 words, steps of at most 40, no harder than the fifth grade.
void lintReading(const Activity &activity, LintFindings &findings);
/// Box items go and come home as their kind does, what comes home is counted, "Lid on" is last.
void lintHome(const Activity &activity, const Catalogue &catalogue, LintFindings &findings);
/// Beside for what SV-01 of safety.md names.
void lintFloor(const Activity &activity, LintFindings &findings);
/// Both directions say what to do, and not the same.
void lintGradings(const Activity &activity, LintFindings &findings);
/// A one-handed and a seated way are written out, not named.
void lintWays(const Activity &activity, LintFindings &findings);
/// No line promises a result; mouth and breath play is nothing more (activities.md 1.5).
void lintClaims(const Activity &activity, LintFindings &findings);
/// What is said describes effort and discovery; no praise for obeying, nothing shouted.
void lintTalk(const Activity &activity, LintFindings &findings);
/// No step names a colour.
void lintColour(const Activity &activity, LintFindings &findings);
/// The main picture shows one step; every other step has its own.
void lintDrawings(const Activity &activity, LintFindings &findings);
/// Name, drawings, steps, talk and gradings are nobody else's.
void lintOfItsOwn(const Activity &activity, const Catalogue &catalogue, LintFindings &findings);

} // namespace lidlark::catalogue
