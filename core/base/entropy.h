#pragma once

#include <array>
#include <cstdint>
#include <string>

namespace lidlark {

/// Where new identities come from. Passed in, so that a test can repeat a history.
class Entropy
{
public:
    Entropy() = default;
    Entropy(const Entropy &) = delete;
    Entropy &operator=(const Entropy &) = delete;
    virtual ~Entropy() = default;

    virtual std::array<std::uint8_t, 16> sixteenBytes() = 0;

    /// 128 bits in hexadecimal: the id of a play, a device, a check-in.
    std::string freshId();
};

/// Makes the system's randomness ready; once, before any use. @returns false when there is none.
bool startRandomness();

/// The system's own randomness, through libsodium.
class SystemEntropy final : public Entropy
{
public:
    std::array<std::uint8_t, 16> sixteenBytes() override;
};

/// A repeatable series for the demo and for tests: BLAKE2b of the seed and a counter.
class SeededEntropy final : public Entropy
{
public:
    explicit SeededEntropy(std::string seed) : m_seed(std::move(seed)) {}
    std::array<std::uint8_t, 16> sixteenBytes() override;

private:
    std::string m_seed;
    std::uint64_t m_count = 0;
};

} // namespace lidlark
