#pragma once

namespace lidlark::box {

/// What an adult notes about the box beside a play.
enum class Act { FloorChecked, Found, TakenOut, CountedIn, Counted, Gone };

} // namespace lidlark::box
