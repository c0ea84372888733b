#include "core/box/double_entries.h"

#include "core/box/sides.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace lidlark::box {

namespace {

using journal::Event;
using journal::Meetings;

/// Two entries that may be one.
struct Pair {
    Entry a;
    Entry b;
    std::int64_t apartMs = 0;
    std::string smaller; ///< Of the two entries' identities.
    std::string larger;
    Question question;
};

std::string identityOf(const Entry &entry, const std::vector<Change> &changes)
{
    return journal::identityOf(*changes[entry.change].first) + '/' +
           std::string(exceptionKindNames.of(entry.kind));
}

bool mayBeOne(const Change &a, const Change &b, const Meetings &meetings)
{
    const bool samePlay = !a.play.empty() && a.play == b.play;
    return a.first->device != b.first->device && !samePlay &&
           meetings.seen.concurrent(*a.first, *b.first) &&
           meetings.withinMargin(*a.first, *b.first);
}

Pair pairOf(const Entry &a, const Entry &b, const std::vector<Change> &changes,
            const Answers &answers)
{
    const Event &first = *changes[a.change].first;
    const Event &second = *changes[b.change].first;
    Pair pair{a,
              b,
              std::abs(first.instant.ms - second.instant.ms),
              identityOf(a, changes),
              identityOf(b, changes),
              {}};
    if (pair.larger < pair.smaller)
        std::swap(pair.smaller, pair.larger);
    pair.question = questionOver(questionId({pair.smaller, pair.larger}), QuestionSort::SameOrTwo,
                                 {&first, &second});
    pair.question.kind = a.kind;
    for (Side &side : pair.question.sides) {
        const Change &change =
            side.identity == journal::identityOf(first) ? changes[a.change] : changes[b.change];
        side.exceptions = change.mostGone();
        side.pieces = side.exceptions.of(a.kind);
    }
    answers.fillIn(pair.question);
    return pair;
}

/// Joins pairs into groups, one after the other (events.md 7.2).
class Joining
{
public:
    Joining(const std::vector<Change> &changes, const std::vector<Pair> &apart)
        : m_changes(changes), m_apart(apart)
    {
    }

    bool join(const Pair &pair)
    {
        const std::size_t one = groupOf(pair.a);
        const std::size_t other = groupOf(pair.b);
        if (one == other || !fit(m_groups[one], m_groups[other]))
            return false;
        m_groups[one].insert(m_groups[one].end(), m_groups[other].begin(), m_groups[other].end());
        m_groups.erase(m_groups.begin() + static_cast<std::ptrdiff_t>(other));
        return true;
    }

    [[nodiscard]] std::vector<Group> groups() const
    {
        std::vector<Group> joined;
        for (Group group : m_groups) {
            std::sort(group.begin(), group.end());
            if (group.size() > 1)
                joined.push_back(group);
        }
        std::sort(joined.begin(), joined.end());
        return joined;
    }

private:
    std::size_t groupOf(const Entry &entry)
    {
        for (std::size_t i = 0; i < m_groups.size(); ++i) {
            if (std::find(m_groups[i].begin(), m_groups[i].end(), entry) != m_groups[i].end())
                return i;
        }
        m_groups.push_back({entry});
        return m_groups.size() - 1;
    }

    [[nodiscard]] bool fit(const Group &one, const Group &other) const
    {
        for (const Entry &a : one) {
            for (const Entry &b : other) {
                const bool sameDevice =
                    m_changes[a.change].first->device == m_changes[b.change].first->device;
                if (sameDevice || saidApart(a, b))
                    return false;
            }
        }
        return true;
    }

    [[nodiscard]] bool saidApart(const Entry &a, const Entry &b) const
    {
        return std::any_of(m_apart.begin(), m_apart.end(), [&](const Pair &pair) {
            return (pair.a == a && pair.b == b) || (pair.a == b && pair.b == a);
        });
    }

    const std::vector<Change> &m_changes;
    const std::vector<Pair> &m_apart;
    std::vector<Group> m_groups;
};

std::vector<Pair> candidatesOf(const std::vector<Change> &changes, const Answers &answers,
                               const Meetings &meetings,
                               const std::function<bool(std::size_t, std::size_t)> &isClosed)
{
    std::vector<Pair> pairs;
    for (std::size_t i = 0; i < changes.size(); ++i) {
        for (std::size_t j = i + 1; j < changes.size(); ++j) {
            if (!mayBeOne(changes[i], changes[j], meetings) || isClosed(i, j))
                continue;
            for (std::size_t k = 0; k < exceptionKindCount; ++k) {
                const auto kind = static_cast<ExceptionKind>(k);
                if (changes[i].mostGone().of(kind) > 0 && changes[j].mostGone().of(kind) > 0)
                    pairs.push_back(pairOf({i, kind}, {j, kind}, changes, answers));
            }
        }
    }
    std::sort(pairs.begin(), pairs.end(), [](const Pair &a, const Pair &b) {
        return std::tie(a.apartMs, a.smaller, a.larger) < std::tie(b.apartMs, b.smaller, b.larger);
    });
    return pairs;
}

} // namespace

DoubleEntries doubleEntriesOf(const std::vector<Change> &changes, const Answers &answers,
                              const Meetings &meetings,
                              const std::function<bool(std::size_t, std::size_t)> &isClosed)
{
    const std::vector<Pair> pairs = candidatesOf(changes, answers, meetings, isClosed);
    std::vector<Pair> apart;
    for (const Pair &pair : pairs) {
        if (pair.question.answer == "two")
            apart.push_back(pair);
    }
    Joining joining(changes, apart);
    DoubleEntries doubles;
    for (const Pair &pair : pairs) {
        if (pair.question.answer == "same")
            joining.join(pair);
        if (!pair.question.isOpen())
            doubles.questions.push_back(pair.question);
    }
    doubles.answered = joining.groups();
    for (const Pair &pair : pairs) {
        if (pair.question.isOpen() && joining.join(pair))
            doubles.questions.push_back(pair.question);
    }
    doubles.possible = joining.groups();
    return doubles;
}

} // namespace lidlark::box
