#pragma once

#include "core/catalogue/grading_fact.h"
#include "core/catalogue/record_reader.h"

#include <optional>

namespace lidlark::catalogue {

/// Reads the `fact` of a line for easier or harder, if it has one, and computes it anew:
///
///     fact: {balloon_fall: {across_mm: 250, drop_mm: 1100}, says: 1.3}
///     fact: {balloon_push: {across_mm: 250, than_across_mm: 200}, says: 1.6}
///     fact: {band_pull: {grade: thin, strands: 2, rest_mm: 500, drawn_mm: 700}, says: 16}
///     fact: {band_times: {rest_mm: 500, drawn_mm: 580, than_drawn_mm: 700}, says: 0.5}
///     fact: {tray_tilt: {ball: tight-paper, across_mm: 60, tray_mm: 400}, says: 27, up_to: 66}
///
/// Units: factUnits. A kind nobody knows, a size core/grading refuses, and a `says` or `up_to` more
/// than a tenth off become findings.
/// @returns the fact as computed, or nothing where there is none or none that can be computed.
std::optional<GradingFact> readGradingFact(RecordReader &line);

} // namespace lidlark::catalogue
