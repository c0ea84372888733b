#include "core/wording/noted_words.h"

#include "core/wording/noted_box_words.h"
#include "core/wording/noted_home_words.h"

namespace lidlark::wording {

namespace {

using journal::Event;
using journal::Kind;

std::size_t countsAmong(std::span<const Event> act)
{
    std::size_t counts = 0;
    for (const Event &event : act)
        counts += event.kind == Kind::Count ? 1 : 0;
    return counts;
}

} // namespace

std::vector<Sentence> notedWords(std::span<const Event> act, const NotedAbout &about)
{
    std::vector<Sentence> lines;
    const std::size_t counts = countsAmong(act);
    if (counts > 1)
        lines.push_back({sayCounted("%1 things counted"), {inDigits(static_cast<int>(counts))}});
    for (const Event &event : act) {
        if (event.kind == Kind::Count && counts > 1)
            continue;
        for (const auto words : {notedOfBox, notedOfHome}) {
            const std::vector<Sentence> told = words(event, about);
            lines.insert(lines.end(), told.begin(), told.end());
        }
    }
    if (lines.empty())
        lines.push_back({say("Something noted"), {}});
    return lines;
}

Sentence notedBy(const std::string &author, int minuteOfDay)
{
    return {say("%1, %2"), {author, TimeOfDay{minuteOfDay}}};
}

} // namespace lidlark::wording
