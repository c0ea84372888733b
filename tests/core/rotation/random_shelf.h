#pragma once

#include "tests/core/rotation/menu_samples.h"

#include <random>

namespace lidlark::rotation::samples {

/// Invented activities with every trait the menu reads, drawn by chance; the seed decides.
class RandomShelf
{
public:
    RandomShelf(int entries, std::uint32_t seed) : m_source(seed)
    {
        for (int i = 0; i < entries; ++i)
            m_shelf.add("entry" + std::to_string(i), [this](catalogue::Activity &a) { draw(a); });
    }

    [[nodiscard]] const Shelf &shelf() const { return m_shelf; }
    int below(int limit)
    {
        return static_cast<int>(m_source() % static_cast<std::uint32_t>(limit));
    }

    /// A past for about two thirds of them.
    std::map<ActivityId, Record> records()
    {
        std::map<ActivityId, Record> records;
        for (std::size_t i = 0; i < m_shelf.size(); ++i) {
            if (below(3) == 0)
                continue;
            Record record;
            record.plays = below(6);
            if (record.plays > 0)
                record.daysSincePlayed = 1 + below(30);
            record.daysSinceOffered = 1 + below(20);
            record.pairs.away = below(record.plays + 1);
            record.pairs.towards = below(record.plays - record.pairs.away + 1);
            record.noticed = below(record.plays + 1);
            record.liked = below(record.noticed + 1);
            records[m_shelf.at(i).id] = record;
        }
        return records;
    }

private:
    template <class Enum> Enum any(std::size_t count)
    {
        return static_cast<Enum>(below(static_cast<int>(count)));
    }

    void draw(catalogue::Activity &a)
    {
        a.skillsMain = {any<catalogue::Skill>(catalogue::skillCount)};
        a.skillsAlso = {any<catalogue::Skill>(catalogue::skillCount)};
        a.minutes = {below(3), 3 + below(6), below(3)};
        a.effect = any<catalogue::Effect>(3);
        a.energy = any<catalogue::Energy>(3);
        a.space = any<catalogue::Space>(4);
        a.sound = any<catalogue::Sound>(3);
        a.wordsNeeded = any<catalogue::Words>(3);
        a.mess = below(3);
        a.hands = below(3);
        for (int i = below(3); i > 0; --i)
            a.cautions.add(any<catalogue::Tag>(catalogue::tagCount));
        if (below(2) == 0)
            a.items = {boxUse("item" + std::to_string(below(4)), 1 + below(8))};
    }

    std::mt19937 m_source;
    Shelf m_shelf;
};

} // namespace lidlark::rotation::samples
