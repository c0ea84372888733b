#pragma once

#include "core/sync/http_call.h"

namespace lidlark::sync {

/// An answer while it comes, held within bounds: whoever sends without end is stopped.
class IncomingAnswer
{
public:
    explicit IncomingAnswer(std::size_t largestBody) : m_largestBody(largestBody) {}

    /// One line of the head, with its line end. @returns false where it is too much.
    bool takeHeader(std::string_view line);
    /// The next piece of the body. @returns false where it is too much.
    bool takeBody(std::string_view piece);

    /// Whether the empty line came that ends the head.
    [[nodiscard]] bool isHeadWhole() const { return m_isHeadWhole; }
    [[nodiscard]] bool isTooLarge() const { return m_isTooLarge; }
    HttpAnswer &answer() { return m_answer; }

private:
    HttpAnswer m_answer;
    std::size_t m_largestBody;
    std::size_t m_headerBytes = 0;
    bool m_isHeadWhole = false;
    bool m_isTooLarge = false;
};

} // namespace lidlark::sync
