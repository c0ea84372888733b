#pragma once

#include "core/store/event_repository.h"

#include <string>

namespace lidlark::store {

/// The two halves of "sort:first/second"; second is empty where there is no slash.
struct SubjectParts {
    std::string first;
    std::string second;
};

inline SubjectParts partsOf(const LaneSubject &subject)
{
    const std::string tail = subject.subject.substr(subject.subject.find(':') + 1);
    const auto slash = tail.find('/');
    if (slash == std::string::npos)
        return {tail, {}};
    return {tail.substr(0, slash), tail.substr(slash + 1)};
}

} // namespace lidlark::store
