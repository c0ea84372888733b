#pragma once

#include "core/box/question.h"
#include "core/journal/seen.h"

#include <span>
#include <string>
#include <vector>

namespace lidlark::box {

/// The id of a question: the hash of what it sets side by side, in one order on every device.
std::string questionId(std::vector<std::string> identities);

/// The answers given about one item (events.md 5, answer).
class Answers
{
public:
    Answers(std::span<const journal::Event> events, const journal::Seen &seen);

    /// Writes into @p question what stands as its answer, and who gave it: what has seen an answer
    /// replaces it; among concurrent different ones, the one that leaves the lower stock.
    void fillIn(Question &question) const;

private:
    struct Given {
        const journal::Event *event;
        std::string question;
        std::string answer;
    };
    std::vector<Given> m_standing;
};

} // namespace lidlark::box
