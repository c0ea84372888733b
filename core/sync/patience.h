#pragma once

#include "core/base/entropy.h"
#include "core/sync/storage.h"

#include <chrono>
#include <functional>

namespace lidlark::sync {

/// How often, and how long apart, something is asked that may come right by waiting.
struct Backoff {
    int tries = 5;                        ///< In all.
    std::chrono::milliseconds first{500}; ///< Before the second; twice as long before each next.
    std::chrono::milliseconds longest{30'000}; ///< Before any.
};

/// Asks a storage again where waiting may bring it round, and never where it cannot: whom it does
/// not let in, it will not let in a second time, and one that is full stays so.
class Patience
{
public:
    /// Waits for so long. @returns false where nobody wants to wait any longer.
    using Wait = std::function<bool(std::chrono::milliseconds)>;

    /// @param entropy spreads the waiting, so that phones that lost the same server do not all come
    /// back at once; outlives this.
    Patience(Entropy &entropy, Wait wait, Backoff backoff = {})
        : m_entropy(entropy), m_wait(std::move(wait)), m_backoff(backoff)
    {
    }

    /// @param call gives an Answer, and may be made any number of times.
    template <class Call> auto ask(Call call)
    {
        return askWhile([](Trouble trouble) { return mayPass(trouble); }, call);
    }
    /// For what may have been done although no answer came: only where it surely was not.
    template <class Call> auto askUnlessDone(Call call)
    {
        return askWhile([](Trouble trouble) { return trouble == Trouble::Locked; }, call);
    }

private:
    static bool mayPass(Trouble trouble)
    {
        return trouble == Trouble::Unreachable || trouble == Trouble::Locked;
    }
    template <class Again, class Call> auto askWhile(Again again, Call call)
    {
        auto answer = call();
        for (int asked = 1; asked < m_backoff.tries; ++asked) {
            const auto trouble = troubleIn(answer);
            if (!trouble || !again(*trouble) || !m_wait(pauseAfter(asked)))
                break;
            answer = call();
        }
        return answer;
    }
    std::chrono::milliseconds pauseAfter(int asked);

    Entropy &m_entropy;
    Wait m_wait;
    Backoff m_backoff;
};

} // namespace lidlark::sync
