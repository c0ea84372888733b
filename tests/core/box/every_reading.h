#pragma once

#include "core/box/item_readings.h"

#include <algorithm>
#include <functional>
#include <vector>

namespace lidlark::test {

/// Walks through every single reading of what is open about an item (events.md 6.4): each count of
/// the basis, each value of a register that has several, each side of the count for each change and
/// removal that is open, and each set of possible doubles joined or apart. Made of nothing but the
/// open matters, so that it can judge the two ends that the ledger takes.
class EveryReading
{
public:
    explicit EveryReading(const box::OpenMatters &matters) : m_matters(matters) {}

    /// @returns how many readings there were.
    int visit(const std::function<void(const box::Reading &)> &look)
    {
        m_look = look;
        m_seen = 0;
        for (std::size_t count = 0; count < m_matters.basis.counts.size(); ++count) {
            m_count = count;
            m_reading = {};
            m_reading.basis = m_matters.basis.counts[count];
            chooseValue(0);
        }
        return m_seen;
    }

private:
    void chooseValue(std::size_t change)
    {
        if (change == m_matters.changes.size())
            return chooseRemoval(0);
        const box::Relation relation = m_matters.relations[m_count][change];
        for (const box::Value &value : m_matters.changes[change].values) {
            for (const bool after : {false, true}) {
                if (relation != box::Relation::Open && after != (relation == box::Relation::After))
                    continue;
                m_reading.values.push_back(value);
                m_reading.after.push_back(after);
                chooseValue(change + 1);
                m_reading.values.pop_back();
                m_reading.after.pop_back();
            }
        }
    }

    void chooseRemoval(std::size_t removal)
    {
        if (removal == m_matters.removals.size())
            return chooseJoins(0, m_matters.doubles.answered);
        const box::Relation relation = m_matters.removalRelations[m_count][removal];
        for (const bool after : {false, true}) {
            if (relation != box::Relation::Open && after != (relation == box::Relation::After))
                continue;
            auto &list = after ? m_reading.removalsAfter : m_reading.removalsBefore;
            list.push_back(m_matters.removals[removal]);
            chooseRemoval(removal + 1);
            list.pop_back();
        }
    }

    void chooseJoins(std::size_t group, const std::vector<box::Group> &joined)
    {
        const std::vector<box::Group> &possible = m_matters.doubles.possible;
        if (group == possible.size())
            return show(joined);
        chooseJoins(group + 1, joined);
        if (std::find(joined.begin(), joined.end(), possible[group]) != joined.end())
            return;
        std::vector<box::Group> more;
        for (const box::Group &other : joined) {
            const bool inside = std::find(possible[group].begin(), possible[group].end(),
                                          other.front()) != possible[group].end();
            if (!inside)
                more.push_back(other);
        }
        more.push_back(possible[group]);
        chooseJoins(group + 1, more);
    }

    void show(const std::vector<box::Group> &joined)
    {
        for (const bool hopeful : {false, true}) {
            box::Reading reading = m_reading;
            reading.hopeful = hopeful;
            box::countOnce(reading, joined);
            ++m_seen;
            m_look(reading);
        }
    }

    const box::OpenMatters &m_matters;
    std::function<void(const box::Reading &)> m_look;
    box::Reading m_reading;
    std::size_t m_count = 0;
    int m_seen = 0;
};

} // namespace lidlark::test
