#pragma once

#include <rapidcheck.h>

#include <cstdint>

/// Where the random cases of the gate come from: from RapidCheck inside one of its properties, or,
/// where millions of cases are wanted, from a plain generator with a seed.
namespace drawn {

/// SplitMix64. Source: G. L. Steele, D. Lea, C. H. Flood, "Fast splittable pseudorandom number
/// generators", OOPSLA 2014, figure 17.
class Dice
{
public:
    explicit Dice(std::uint64_t seed) : m_state(seed) {}

    /// Draws from the first @p percent of every range, as RapidCheck does in its smaller cases:
    /// most rules show only where little else refuses.
    void reachFor(std::uint64_t percent) { m_percent = percent; }

    template <class Number> Number between(Number low, Number high)
    {
        const auto range = static_cast<std::uint64_t>(high - low);
        return low + static_cast<Number>(next() % (1 + (range - 1) * m_percent / 100));
    }

private:
    std::uint64_t next()
    {
        m_state += 0x9e3779b97f4a7c15U;
        std::uint64_t bits = m_state;
        bits = (bits ^ (bits >> 30U)) * 0xbf58476d1ce4e5b9U;
        bits = (bits ^ (bits >> 27U)) * 0x94d049bb133111ebU;
        return bits ^ (bits >> 31U);
    }

    std::uint64_t m_state;
    std::uint64_t m_percent = 100;
};

/// The dice of this thread; null: RapidCheck draws.
inline Dice *&diceOnTheTable()
{
    static thread_local Dice *dice = nullptr;
    return dice;
}

/// Dice that every draw of this thread uses while this lives.
class WithDice
{
public:
    explicit WithDice(std::uint64_t seed) : m_dice(seed) { diceOnTheTable() = &m_dice; }
    /// Before case @p number, so that short and long reaches take turns.
    void begin(int number) { m_dice.reachFor(static_cast<std::uint64_t>(number % 100) + 1); }
    ~WithDice() { diceOnTheTable() = nullptr; }
    WithDice(const WithDice &) = delete;
    WithDice &operator=(const WithDice &) = delete;
    WithDice(WithDice &&) = delete;
    WithDice &operator=(WithDice &&) = delete;

private:
    Dice m_dice;
};

/// A whole number from @p low up to, not including, @p high.
template <class Number> Number between(Number low, Number high)
{
    Dice *dice = diceOnTheTable();
    return dice ? dice->between(low, high) : *rc::gen::inRange(low, high);
}

} // namespace drawn
