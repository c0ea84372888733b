#include "core/wording/line_words.h"

#include <utility>

namespace lidlark::wording {

Sentence inOneLine(std::vector<Argument> parts)
{
    if (parts.empty())
        return {};
    Sentence line{say("%1"), {std::move(parts.front())}};
    for (std::size_t i = 1; i < parts.size(); ++i)
        line = {say("%1. %2"), {std::move(line), std::move(parts[i])}};
    return line;
}

Sentence asSentence(std::vector<Argument> parts)
{
    if (parts.empty())
        return {};
    return {say("%1."), {inOneLine(std::move(parts))}};
}

} // namespace lidlark::wording
