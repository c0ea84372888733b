#pragma once

#include "core/catalogue/measures.h"
#include "core/catalogue/record_reader.h"

namespace lidlark::catalogue {

/// Reads the group `measures` of an item and refuses sizes that cannot be: below 0.1 or above
/// 2000 mm ("are these millimetres?"), two sizes in the wrong order, a least larger than the whole.
/// The value is of use only when no finding was added.
Measures readMeasures(RecordReader &measures);

/// A record's `shape` and `mm` as a solid, or nothing and a finding at the field.
std::optional<measure::Solid> readSolid(RecordReader &record);

} // namespace lidlark::catalogue
