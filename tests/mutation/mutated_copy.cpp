#include "tests/mutation/mutated_copy.h"

#include <algorithm>

namespace lidlark::mutation {

std::string callOf(const std::string &function, const std::string &number)
{
    std::string call = "::lidlark::mutation::";
    call.append(function).append("(").append(number).append(", ");
    return call;
}

std::string isChosen(const std::string &number)
{
    std::string call = "::lidlark::mutation::is(";
    call.append(number).append(")");
    return call;
}

std::string MutatedCopy::mutant(std::size_t token, const std::string &what)
{
    m_all.push_back({m_source.name(), m_source.lineOf(token), what, m_source.lineTextOf(token)});
    return std::to_string(m_all.size());
}

void MutatedCopy::wrap(Span span, Layer layer, const std::string &before, const std::string &after)
{
    m_wraps.push_back({m_source.at(span.first).begin, m_source.at(span.last - 1).end(), layer,
                       before, after, false});
}

void MutatedCopy::replace(std::size_t token, const std::string &text)
{
    const Token &old = m_source.at(token);
    m_wraps.push_back({old.begin, old.end(), Layer::Value, text, "", true});
}

std::vector<MutatedCopy::Wrap> MutatedCopy::outerFirst() const
{
    std::vector<Wrap> wraps = m_wraps;
    std::stable_sort(wraps.begin(), wraps.end(), [](const Wrap &a, const Wrap &b) {
        if (a.begin != b.begin)
            return a.begin < b.begin;
        return a.end != b.end ? a.end > b.end : a.layer < b.layer;
    });
    return wraps;
}

std::string MutatedCopy::text() const
{
    const std::string &old = m_source.text();
    std::string copy =
        "#include \"tests/mutation/chosen.h\"\n#line 1 \"" + m_source.name() + "\"\n";
    std::size_t at = 0;
    const auto copyTo = [&](std::size_t end) {
        if (end > at)
            copy.append(old, at, end - at);
        at = std::max(at, end);
    };
    std::vector<Wrap> open;
    const auto closeUpTo = [&](std::size_t begin) {
        while (!open.empty() && open.back().end <= begin) {
            copyTo(open.back().end);
            copy += open.back().after;
            open.pop_back();
        }
    };
    for (const Wrap &wrap : outerFirst()) {
        closeUpTo(wrap.begin);
        copyTo(wrap.begin);
        copy += wrap.before;
        if (wrap.replaces)
            at = wrap.end;
        open.push_back(wrap);
    }
    closeUpTo(old.size());
    copyTo(old.size());
    return copy;
}

} // namespace lidlark::mutation
