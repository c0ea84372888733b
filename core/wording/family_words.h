#pragma once

#include "core/base/result.h"
#include "core/wording/sentence.h"

namespace lidlark::wording {

/// Why one of several families on a phone is not shown. @param file its name, without folders.
Sentence unreadableFamily(const Error &problem, const std::string &file);

} // namespace lidlark::wording
