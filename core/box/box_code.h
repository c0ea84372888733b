#pragma once

#include "core/base/id.h"

#include <string>

namespace lidlark::box {

/// What a box is called where its child is not to be read from it: "K7-4M". The same on every phone
/// and every print, made of the box's id alone. Four signs of 32: of sixty boxes, two share a code
/// once in six hundred tries, and then the child's alias still tells them apart.
std::string boxCode(const BoxId &box);

} // namespace lidlark::box
